#!/usr/bin/env python3
"""Works the sheet of the launch example by hand, away from the program.

Reads examples/launch/plan.toml, takes steam from CoolProp, does the sums that a boiler tester
would do with pencil and tables, and prints the sheet: `launch_sheet.py PLAN` as text, and
`launch_sheet.py PLAN --toml` as the numbers that the tests compare. Nothing of the program is
called or read.

Needs: CoolProp, numpy, scipy.
"""

import math
import sys
import tomllib

import numpy as np
from CoolProp.CoolProp import PropsSI
from scipy.integrate import quad
from scipy.optimize import brentq

PI = math.pi

# Densities, kg/m3: copper phosphorus-deoxidised 8 940, phosphor bronze CW451K 8 800 (metal
# handbooks, from memory).
DENSITY = {"CW024A": 8940.0, "CW451K": 8800.0}

# Numbers that the plan leaves open, at the middle of the range that the program states for them.
ASSUMED = {
    "chest": 0.97,
    "admission": 0.95,
    "diagram": 0.90,
    "dryness": 0.97,
    "engine_loss": 100.0,
    "nozzle": 0.95,
    "voidage": 0.42,
    "sphericity": 0.70,
    "bed_k": 1250.0,
    "bed_factor": 1.15,
    "shell_loss_w": 60.0,
    "wall_rise_high": 20.0,
}

# Allowable stress of annealed copper against temperature.
PIPE_CODE = ([100, 150, 200, 250, 300, 350, 400], [6000, 5100, 4900, 4800, 4700, 4000, 3000])
SHIP = ([50, 75, 100, 125, 150, 175, 200], [41.2, 41.2, 40.2, 40.2, 34.3, 27.5, 18.6])

# Lower bound of collapse pressure over yield pressure against elastic over yield pressure
# (EN 13445-3, table of clause 8.5), as far as this boiler goes.
BOUND = {
    0.0: 0.0, 0.25: 0.125, 0.5: 0.251, 0.75: 0.375, 1.0: 0.5, 1.25: 0.605, 1.5: 0.68, 1.75: 0.72,
    2.0: 0.755, 2.25: 0.78, 2.5: 0.803, 2.75: 0.822, 3.0: 0.836, 3.25: 0.849, 3.5: 0.861,
    3.75: 0.870, 4.0: 0.879, 4.25: 0.887, 4.5: 0.896, 4.75: 0.905, 5.0: 0.914, 5.25: 0.917,
    5.5: 0.923, 5.75: 0.929, 6.0: 0.935, 6.5: 0.947, 7.0: 0.959,
}
TRADE = ([65, 110, 150, 175, 200], [46, 40, 34, 26, 18])
MINIATURE = 26.0  # MPa, the single limit of the miniature boiler code

# Annealed copper and its braze, as the program states and sources them.
PROOF_COLD, PROOF_HOT, YOUNG, POISSON = 45.0, 35.0, 110e3, 0.34
WALL_SHARE, SIZE_SHARE = 0.115, 0.01

UNITS = {"mm": 1.0, "%": 0.01, "bar": 1e5, "mbar": 100.0, "°C": 1.0, "rpm": 1 / 60, "min": 60.0}


def number(text):
    """A number with its unit, in mm, Pa, degrees Celsius, 1/s, s or as a share."""
    text = text.replace(" absolute", "").strip()
    for unit in sorted(UNITS, key=len, reverse=True):
        if text.endswith(unit):
            return float(text[: -len(unit)]) * UNITS[unit]
    return float(text)


def drawn(size):
    return number(size if isinstance(size, str) else size["drawn"])


def at_bad_end(size, share, sign):
    """A size at its bad end: by its tolerance, else by the share that is assumed."""
    value = drawn(size)
    if isinstance(size, str):
        return value * (1 + sign * share)
    tolerance = number(size["tolerance"])
    return value * (1 + sign * tolerance) if size["tolerance"].endswith("%") else value + sign * tolerance


def table(rows, x):
    return float(np.interp(x, rows[0], rows[1]))


def design_stress(celsius):
    """The least of four stresses of annealed copper, MPa."""
    psi = table(PIPE_CODE, celsius * 9 / 5 + 32)
    return min(MINIATURE, psi * 6.894757e-3, table(SHIP, celsius), table(TRADE, celsius))


def disc(d):
    return PI * d * d / 4


class Boiler:
    """Sizes in mm; heights above the underside of the foundation ring."""

    def __init__(self, plan):
        b = plan["boiler"]
        self.outside, self.wall = drawn(b["barrel"]["outside"]), drawn(b["barrel"]["wall"])
        self.bore = self.outside - 2 * self.wall
        self.height = drawn(b["barrel"]["length"])
        self.box, self.box_wall = drawn(b["firebox"]["outside"]), drawn(b["firebox"]["wall"])
        self.box_bore = self.box - 2 * self.box_wall
        self.box_height = drawn(b["firebox"]["height"])
        self.ring = drawn(b["foundation-ring"]["depth"])
        up, low = b["tube-plate"]["upper"], b["tube-plate"]["lower"]
        self.t_up, self.t_low = drawn(up["thickness"]), drawn(low["thickness"])
        self.r_up, self.r_low = drawn(up["inside-radius"]), drawn(low["inside-radius"])
        # The upper flange ends flush with the barrel, the lower plate lies on the firebox tube.
        self.up_wet = self.height - drawn(up["flange-height"])
        self.crown = self.box_height + self.t_low
        self.between = self.up_wet - self.crown
        t = b["tubes"]
        self.tube, self.tube_wall = drawn(t["outside"]), drawn(t["wall"])
        self.tube_bore = self.tube - 2 * self.tube_wall
        self.pitch, self.margin = drawn(t["pitch"]), drawn(t["margin"])
        self.hole = drawn(b["firehole"]["bore"]) + 2 * drawn(b["firehole"]["wall"])
        self.level = number(b["water-level"]["working"])
        self.lowest = number(b["water-level"]["lowest"])
        self.bushes = [
            (drawn(x["outside"]), drawn(x["length-in"]), number(x["height"]))
            for x in b["bush"]
            if x["on"] == "barrel"
        ]
        self.places = self.nest()

    def nest(self):
        """Places of a triangular nest, the best of three middles."""
        kept = min(
            radius - max(self.margin + self.tube / 2, t + r + t + self.tube / 2)
            for radius, t, r in [
                (self.bore / 2, self.t_up, self.r_up),
                (self.box_bore / 2, self.t_low, self.r_low),
            ]
        )
        p, best = self.pitch, []
        for middle in [(0, 0), (p / 2, 0), (p / 2, p / (2 * math.sqrt(3)))]:
            places = [
                (i * p + j * p / 2 - middle[0], j * p * math.sqrt(3) / 2 - middle[1])
                for i in range(-9, 10)
                for j in range(-9, 10)
            ]
            places = [at for at in places if math.hypot(*at) <= kept + 1e-9]
            best = max(best, places, key=len)
        return best

    def strip(self, bore):
        """Widest circle between the outer tubes and the wall, found by trying every direction."""

        def at(angle):
            def gap(rho):
                x, y = rho * math.cos(angle), rho * math.sin(angle)
                near = min(math.hypot(x - u, y - v) for u, v in self.places) - self.tube / 2
                return near - (bore / 2 - rho)

            return 2 * (bore / 2 - brentq(gap, 0.0, bore / 2))

        coarse = np.linspace(0, 2 * PI, 1441)
        first = max(coarse, key=at)
        fine = np.linspace(first - 0.005, first + 0.005, 2001)
        return max(at(a) for a in fine)

    def across(self, d, outer, inner):
        """Volume of a round bar of diameter d square to the axis, between two cylinders."""
        a = d / 2

        def chord(r, y):
            return math.sqrt(r * r - y * y)

        return quad(lambda y: 2 * math.sqrt(a * a - y * y) * (chord(outer, y) - chord(inner, y)), -a, a)[0]

    def bar_end(self, d, reach):
        """Volume of a bar that stands in from the wall of the barrel by a reach, flat at its end."""
        a, r = d / 2, self.bore / 2
        return quad(
            lambda y: 2 * math.sqrt(a * a - y * y) * (math.sqrt(r * r - y * y) - (r - reach)), -a, a
        )[0]

    def plate_outer(self, depth, radius, bend):
        if depth >= bend:
            return radius
        return radius - bend + math.sqrt(bend**2 - (bend - depth) ** 2)

    def water(self, level):
        """Water below a level that lies between crown and upper plate, mm3."""
        volume = disc(self.bore) * (level - self.ring) - disc(self.box) * (self.box_height - self.ring)
        bend = self.t_low + self.r_low
        volume -= quad(
            lambda depth: PI * self.plate_outer(depth, self.box_bore / 2, bend) ** 2, 0, self.t_low
        )[0]
        # Water stands in the groove between the bend and the firebox tube.
        volume += quad(
            lambda depth: disc(self.box_bore) - PI * self.plate_outer(depth, self.box_bore / 2, bend) ** 2,
            self.t_low,
            bend,
        )[0]
        volume -= len(self.places) * disc(self.tube) * (level - self.crown)
        # No bush of this plan stands half in the water.
        volume -= sum(self.bar_end(d, reach) for d, reach, z in self.bushes if z < level)
        return volume - self.across(self.hole, self.bore / 2, self.box / 2)

    def steam(self):
        """Room above the working level, up into the groove round the bend of the upper plate."""
        bend = self.t_up + self.r_up
        groove = quad(
            lambda depth: disc(self.bore) - PI * self.plate_outer(depth, self.bore / 2, bend) ** 2, 0, bend
        )[0]
        open_area = disc(self.bore) - len(self.places) * disc(self.tube)
        bushes = sum(self.bar_end(d, reach) for d, reach, z in self.bushes if z > self.level)
        return open_area * (self.up_wet - self.level) + groove - bushes


def geometry(sheet, plan, boiler):
    b, n = boiler, len(boiler.places)
    put = sheet.put
    put("tubes.count", n, "", "triangular places within the flat of both plates")
    put("tubes.length", b.between, "mm", "between the wet faces of the plates")
    put("surface.tubes", n * PI * b.tube_bore * b.between / 1e2, "cm2", "bores, between the plates")
    side_from = max(b.ring, drawn(plan["grate"]["height"])) if "height" in plan["grate"] else b.ring
    side = PI * b.box_bore * (b.box_height - side_from) - disc(b.hole)
    put("surface.firebox-side", side / 1e2, "cm2", "from the grate to the crown, less the firehole")
    put("surface.crown", (disc(b.box_bore) - n * disc(b.tube_bore)) / 1e2, "cm2", "less the tubes")
    put("surface.grate", disc(drawn(plan["grate"]["diameter"])) / 1e2, "cm2", "round")
    put("water.volume", b.water(b.level) / 1e3, "ml", "at the working level")
    put("water.reserve", (b.water(b.level) - b.water(b.lowest)) / 1e3, "ml", "working to lowest level")
    put("water.surface", (disc(b.bore) - n * disc(b.tube)) / 1e2, "cm2", "at the working level")
    put("water.steam", b.steam() / 1e3, "ml", "room above it, the bushes taken as solid")
    copper = DENSITY[plan["boiler"]["metal"]] * 1e-6  # g/mm3
    barrel = (disc(b.outside) - disc(b.bore)) * b.height
    holes = [b.hole] + [d for d, _, _ in b.bushes]
    barrel -= sum(b.across(d, b.outside / 2, b.bore / 2) for d in holes)
    put("mass.barrel", barrel * copper, "g", "less firehole and bush holes")
    box = (disc(b.box) - disc(b.box_bore)) * b.box_height
    box -= b.across(b.hole, b.box / 2, b.box_bore / 2)
    put("mass.firebox", box * copper, "g", "less the firehole")
    tube = (disc(b.tube) - disc(b.tube_bore)) * (b.between + b.t_up + b.t_low)
    put("mass.tube", tube * copper, "g", "one tube, through both plates")


def lobed(d_m, t, length):
    """Elastic collapse of a tube between supports: the least over the number of lobes."""
    r, z2 = d_m / 2, (PI * d_m / 2 / length) ** 2

    def p(n):
        stretch = 1 / (n * n / z2 + 1) ** 2
        bending = t * t / (12 * r * r * (1 - POISSON**2)) * (n * n - 1 + z2) ** 2
        return YOUNG * t / r / (n * n - 1 + z2 / 2) * (stretch + bending)

    return min((p(n), n) for n in range(2, 30))


def first_yield(proof, r, t, w):
    """Pressure at which an oval long tube first yields at its outside: the smaller root."""
    q = YOUNG / (4 * (1 - POISSON**2)) * (t / r) ** 3
    # Bending by the deflection that pressure has magnified, and hoop compression, reach yield.
    return brentq(lambda p: p * r / t + 6 * p * r / t * (w / t) / (1 - p / q) - proof, 0, q * (1 - 1e-12))


def flue(sheet, plan, boiler, f):
    firebox = plan["boiler"]["firebox"]
    d_o = at_bad_end(firebox["outside"], SIZE_SHARE, 1)
    t = at_bad_end(firebox["wall"], WALL_SHARE, -1)
    r = (d_o - t) / 2
    put = sheet.put
    put("firebox.length", boiler.box_height - boiler.ring, "mm", "ring to crown")
    p_m, lobes = lobed(2 * r, t, boiler.box_height - boiler.ring)
    put("firebox.elastic", p_m * 10, "bar", f"elastic collapse, {lobes} lobes")
    rows = (list(BOUND), list(BOUND.values()))
    limits = {}
    for name, proof, on_collapse, on_yield in [
        ("work", PROOF_HOT, 1.5, 1.5),
        ("test", PROOF_COLD, 1.1 * 2.0, 2.0),
    ]:
        p_y = proof / 1.25 * t / r
        limits[f"collapse-{name}"] = table(rows, p_m / p_y) * p_y / on_collapse
        w = drawn(firebox["ovality"]) / 4
        limits[f"first-yield-{name}"] = first_yield(proof, r, t, w) / on_yield
    limits["stress"] = 2 * f * t / d_o
    for name, p in limits.items():
        put(f"firebox.{name}", p * 10, "bar", "working pressure that it allows")
    put("firebox.bears", min(limits.values()) * 10, "bar", "the least of them")


def plate(sheet, plan, boiler, p, f):
    allowed = min(1.5 * f["shell"], 1.35 * PROOF_COLD / 2.0)
    for name, bore, stress in [("upper", boiler.bore, f["shell"]), ("lower", boiler.box_bore, f["fire"])]:
        t = at_bad_end(plan["boiler"]["tube-plate"][name]["thickness"], WALL_SHARE, -1)
        m = boiler.strip(bore)
        sigma = 0.75 * p * (m / t) ** 2
        allowed = min(1.5 * stress, 1.35 * PROOF_COLD / 2.0)
        sheet.put(f"plate.{name}.strip", m, "mm", "widest circle from tubes to wall")
        sheet.put(f"plate.{name}.bending", sigma, "MPa", "the strip, held at its edges but free to turn")
        sheet.put(f"plate.{name}.margin", allowed / sigma, "", f"allowed {allowed:.1f} MPa")


def opening(sheet, plan, p, f):
    barrel = plan["boiler"]["barrel"]
    t = at_bad_end(barrel["wall"], WALL_SHARE, -1)
    r_o = at_bad_end(barrel["outside"], SIZE_SHARE, 1) / 2
    t_r = p * r_o / (f + 0.4 * p)
    bush = plan["boiler"]["bush"][0]
    d = float(bush["thread"][1:].split("x")[0])
    t_n = (at_bad_end(bush["outside"], SIZE_SHARE, -1) - d) / 2
    out = at_bad_end(bush["length-out"], SIZE_SHARE, -1)
    inwards = at_bad_end(bush["length-in"], SIZE_SHARE, -1)
    s_b = 40.0
    f_r, t_rn = min(s_b / f, 1.0), p * d / 2 / (s_b - 0.6 * p)
    spare = t - t_r
    asked = d * t_r + 2 * t_n * t_r * (1 - f_r)
    shell = max(d * spare, 2 * (t + t_n) * spare) - 2 * t_n * spare * (1 - f_r)
    outward = (t_n - t_rn) * f_r * min(5 * t, 5 * t_n, 2 * out)
    inward = 2 * t_n * f_r * min(2.5 * t, 2.5 * t_n, inwards)
    sheet.put("opening.asked", asked, "mm2", f"bush {bush['id']}: bore {d:g} mm in a wall that needs {t_r:.3f} mm")
    sheet.put("opening.shell", shell, "mm2", "to spare in the shell")
    sheet.put("opening.outward", outward, "mm2", "in the bush outside")
    sheet.put("opening.inward", inward, "mm2", "in the bush inside")
    sheet.put("opening.margin", (shell + outward + inward) / asked, "", "there over asked")


def strength(sheet, plan, boiler):
    p_pa = number(plan["boiler"]["design-pressure"])
    air = number(plan["site"]["atmosphere"])
    p = p_pa / 1e6
    saturation = PropsSI("T", "P", p_pa + air, "Q", 0, "Water") - 273.15
    f = {"shell": design_stress(saturation), "fire": design_stress(saturation + ASSUMED["wall_rise_high"])}
    put = sheet.put
    put("stress.temperature", saturation, "°C", "saturation at the design pressure")
    put("stress.shell", f["shell"], "MPa", "at saturation")
    put("stress.fire", f["fire"], "MPa", "20 K above it, where the fire touches")
    barrel = plan["boiler"]["barrel"]
    d_e = at_bad_end(barrel["outside"], SIZE_SHARE, 1)
    t = at_bad_end(barrel["wall"], WALL_SHARE, -1)
    asked = p * d_e / (2 * f["shell"] + p)
    put("shell.asked", asked, "mm", "wall that the pressure asks, seamless")
    put("shell.margin", t / asked, "", f"with {t:.2f} mm at its thinnest")
    put("shell.test", 2 * p * (d_e - t) / (2 * t), "MPa", "hoop stress at the water test of twice the pressure")
    flue(sheet, plan, boiler, f["fire"])
    plate(sheet, plan, boiler, p, f)
    opening(sheet, plan, p, f["shell"])


def engine(sheet, plan):
    e, air = plan["engine"], number(plan["site"]["atmosphere"])
    boiler = number(plan["duty"]["pressure"]) + air
    p_c = ASSUMED["chest"] * boiler
    p_1 = ASSUMED["admission"] * p_c
    bore, rod, stroke = drawn(e["bore"]) / 1e3, drawn(e["rod"]) / 1e3, drawn(e["stroke"]) / 1e3
    swept = PI / 4 * (bore**2 - rod**2 / 2) * stroke
    strokes = e["cylinders"] * 2 * number(e["speed"])
    r, c, q = (number(e[k]) for k in ["cut-off", "clearance", "compression"])
    c_n, area = ASSUMED["nozzle"], disc(drawn(plan["blast"]["nozzle"])) / 1e6

    def dry(p):
        return PropsSI("D", "P", p, "Q", 1, "Water")

    def steam(back):
        indicated = swept * (dry(p_1) * (r + c) - dry(back) * (q + c))
        return indicated * (1 + number(e["missing"])) * strokes

    def power(back):
        mean = p_1 * (r + (r + c) * math.log((1 + c) / (r + c))) - back * (
            (1 - q) + (q + c) * math.log((q + c) / c)
        )
        return ASSUMED["diagram"] * mean * swept * strokes

    # The exhaust is what work and loss leave of the steam supplied: the loss by bores and covers.
    surface = e["cylinders"] * (PI * bore * stroke + 2 * PI / 4 * bore**2)
    room = number(plan["site"]["air"]) + 273.15
    lost = ASSUMED["engine_loss"] * surface * (PropsSI("T", "P", p_c, "Q", 1, "Water") - room)
    supplied = PropsSI("H", "P", boiler, "Q", ASSUMED["dryness"], "Water")
    sheet.put("engine.swept", swept * 1e6, "ml", "one stroke, the rod taken off one side")
    sheet.put("engine.admission", p_1 / 1e3, "kPa", "absolute")
    for gain in (0, 100, 200):

        def left(back):
            enthalpy = supplied + gain * 1e3 - (power(back) + lost) / steam(back)
            rho = PropsSI("D", "P", air, "H", enthalpy, "Water")
            speed = steam(back) / (c_n * area * rho)
            return back - air - rho * (speed / c_n) ** 2 / 2

        back = brentq(left, air, p_1)
        put = sheet.put
        why = f"with {gain} kJ/kg from the coil"
        put(f"engine.back-pressure.{gain}", back / 1e3, "kPa", f"absolute, {why}")
        put(f"engine.demand.{gain}", steam(back) * 3600, "kg/h", why)
        put(f"engine.power.{gain}", power(back), "W", f"indicated, {why}")


# Anthracite as fired, mass shares (typical analysis, common practice).
COAL = {"C": 0.865, "H": 0.032, "O": 0.022, "N": 0.01, "S": 0.008, "A": 0.04, "W": 0.023}
AIR_RATIO, BURNT = 1.5, 0.88
MOLAR = {"CO2": 44.01, "H2O": 18.015, "O2": 31.999, "N2": 28.013, "Ar": 39.948}
FLUID = {"CO2": "CarbonDioxide", "H2O": "Water", "O2": "Oxygen", "N2": "Nitrogen", "Ar": "Argon"}
AIR_OXYGEN, AIR_ARGON = 0.20946, 0.00934


def flue_gas():
    """Moles of flue gas and of air from a kilogram of coal; sulphur is counted with carbon."""
    carbon = COAL["C"] / 12.011 + COAL["S"] / 32.06
    need = carbon + COAL["H"] / 4 / 1.008 - COAL["O"] / 31.999
    oxygen = need * AIR_RATIO
    air = oxygen / AIR_OXYGEN
    gas = {
        "CO2": carbon,
        "H2O": COAL["H"] / 2.016 + COAL["W"] / 18.015,
        "O2": oxygen - need,
        "N2": air * (1 - AIR_OXYGEN - AIR_ARGON) + COAL["N"] / 28.013,
        "Ar": air * AIR_ARGON,
    }
    return air, gas


def enthalpy(gas, kelvin):
    """Enthalpy of the flue gas above 25 °C as an ideal gas, kJ/kg."""
    mass = sum(gas[s] * MOLAR[s] for s in gas)
    total = 0.0
    for s, moles in gas.items():
        steps = np.linspace(298.15, kelvin, 201)
        ideal = [PropsSI("CP0MOLAR", "T", t, "P", 1e3, FLUID[s]) for t in steps]
        total += moles * float(np.trapezoid(ideal, steps))
    return total / mass


def fire(sheet, plan):
    air, gas = flue_gas()
    mass = sum(gas[s] * MOLAR[s] for s in gas)
    molar = mass / sum(gas.values())
    put = sheet.put
    hhv = 34.91 * COAL["C"] + 117.83 * COAL["H"] + 10.05 * COAL["S"] - 10.34 * COAL["O"]
    hhv += -1.51 * COAL["N"] - 2.11 * COAL["A"]
    put("coal.lower-value", hhv - 2.442 * (8.936 * COAL["H"] + COAL["W"]), "MJ/kg", "from the elements")
    put("coal.air", air * 28.964, "kg/kg", "with half as much again as is needed")
    put("coal.flue-gas", 1 - COAL["A"] + air * 28.964, "kg/kg", "coal and air less the ash")
    put("coal.molar-mass", molar, "g/mol", "of the flue gas")
    for kelvin in range(400, 2001, 100):
        put(f"gas.enthalpy.{kelvin}", enthalpy(gas, kelvin), "kJ/kg", "above 25 °C")
    feed = PropsSI("H", "P", 101300, "T", number(plan["site"]["feed-water"]) + 273.15, "Water")
    boiler = number(plan["duty"]["pressure"]) + number(plan["site"]["atmosphere"])
    steam = PropsSI("H", "P", boiler, "Q", ASSUMED["dryness"], "Water")
    put("steam.heat", (steam - feed) / 1e3, "kJ/kg", "from feed to steam of 3 % water")
    put("steam.saturation", PropsSI("T", "P", boiler, "Q", 0, "Water"), "K", "at working pressure")
    # Pressure loss of the bed over its depth: viscous and inertial parts of the packed column.
    hot = ASSUMED["bed_k"]
    density = number(plan["site"]["atmosphere"]) * molar / 8314.46 / hot
    d = drawn(plan["fire"]["lump"]) / 1e3 * ASSUMED["sphericity"]
    depth, void = drawn(plan["fire"]["depth"]) / 1e3, ASSUMED["voidage"]
    whole = ASSUMED["bed_factor"] * number(plan["ash"]["bed-factor"])
    inertial = whole * 1.75 * (1 - void) / (void**3 * d) / density * depth
    put("bed.gas-density", density, "kg/m3", "flue gas at 1 250 K")
    put("bed.inertial", inertial, "Pa m4 s2/kg2", "loss by inertia over the square of the mass flux")
    put("bed.viscous-shape", whole * 150 * (1 - void) ** 2 / (void**3 * d * d) / density * depth, "1/m kg", "loss by viscosity over flux and viscosity")


def outside(sheet, plan):
    p, celsius = number(plan["site"]["atmosphere"]), number(plan["site"]["air"])
    density = PropsSI("D", "P", p, "T", celsius + 273.15, "Air")
    sheet.put("air.density", density, "kg/m3", "dry, with its argon")


class Sheet:
    """Numbers in sections, each section with the tolerance to which the tests hold it."""

    def __init__(self):
        self.sections = []

    def section(self, name, tolerance, because):
        self.sections.append((name, tolerance, because, []))

    def put(self, name, value, unit, note):
        self.sections[-1][3].append((name, float(value), unit, note))

    def text(self):
        for section, tolerance, because, rows in self.sections:
            print(f"\n## {section.capitalize()}\n\nTo {tolerance:g} of the value: {because}.\n")
            print("| what | value | unit | how |\n| --- | --- | --- | --- |")
            for name, value, unit, note in rows:
                print(f"| {name} | {value:.5g} | {unit} | {note} |")

    def toml(self):
        print("# Numbers of sheet.md as the tests read them. Written by tools/launch_sheet.py.\n")
        print('kind = "independent calculation"')
        print('by = "tools/launch_sheet.py; steam, air and gases by a general library of properties"')
        for section, tolerance, because, rows in self.sections:
            print(f"\n[{section}]\ntolerance = {tolerance:g}\nbecause = \"{because}\"\n\n[{section}.values]")
            for name, value, unit, note in rows:
                remark = ", ".join(part for part in (unit, note) if part)
                print(f'"{name}" = {value:.8g}  # {remark}')


def main():
    with open(sys.argv[1], "rb") as file:
        plan = tomllib.load(file)
    sheet, boiler = Sheet(), Boiler(plan)
    sheet.section("geometry", 1e-4, "shapes alone; the strip of the outer tubes was found by trial")
    geometry(sheet, plan, boiler)
    sheet.section("strength", 1e-4, "the same published forms; steam tables differ by less")
    strength(sheet, plan, boiler)
    sheet.section("engine", 5e-4, "two formulations of steam differ by a few parts in ten thousand")
    engine(sheet, plan)
    sheet.section("fire", 5e-3, "the program counts argon as nitrogen: its gas is up to 0.45 % lighter")
    fire(sheet, plan)
    outside(sheet, plan)
    if "--toml" in sys.argv:
        sheet.toml()
    else:
        sheet.text()


main()
