#!/usr/bin/env python3
"""Works the grids of gas properties that the tests of `formulas` compare with.

Run from the root of the tree: `python3 tools/gas_grid.py` with cantera, CoolProp and numpy
installed. It writes

* `crates/formulas/tests/data/flue-gas-grid.csv`: mixtures, by kinetic theory on the data file of
  GRI-Mech 3.0 (specific heat, enthalpy above 298.15 K, viscosity, conductivity);
* `crates/formulas/tests/data/pure-gas-grid.csv`: pure gases, by reference equations;
* `crates/formulas/tests/kinetic_theory/mod.rs`: fits to the kinetic theory of each pure gas, so
  that sums made elsewhere on that theory can be repeated on it.
"""

import pathlib

import cantera
import CoolProp
import numpy
from CoolProp.CoolProp import PropsSI

TESTS = pathlib.Path("crates/formulas/tests")
GASES = ["CO2", "H2O", "O2", "N2"]
NAMES = {"CO2": "carbon dioxide", "H2O": "water vapour", "O2": "oxygen", "N2": "nitrogen"}
# Dry air, and the flue of coal, charcoal, wood and propane at several air ratios; shares by
# volume of carbon dioxide, water vapour and oxygen.
MIXTURES = [
    ("dry air", 0.0, 0.0, 1 / 4.773),
    ("steam coal 1.5", 0.1207, 0.0360, 0.0684),
    ("anthracite 1.5", 0.1247, 0.0296, 0.0686),
    ("charcoal 1.3", 0.1514, 0.0338, 0.0468),
    ("wood 1.2", 0.1395, 0.1563, 0.0301),
    ("propane 1.3", 0.0908, 0.1211, 0.0454),
    ("steam", 0.0, 1.0, 0.0),
]
TEMPERATURES = [400, 500, 600, 800, 1000, 1200, 1400, 1600, 1800]
ATMOSPHERE = 101325.0


def solution():
    gas = cantera.Solution("gri30.yaml")
    gas.transport_model = "mixture-averaged"
    return gas


def mixtures(gas):
    yield f"# Flue gas by kinetic theory: cantera {cantera.__version__}, gri30.yaml, mixture-averaged"
    yield "# transport, 101325 Pa. Regenerate with tools/gas_grid.py."
    yield "name,T K,x_co2,x_h2o,x_o2,cp J/(kg K),h J/kg,mu Pa s,k W/(m K)"
    for name, co2, h2o, o2 in MIXTURES:
        shares = {"CO2": co2, "H2O": h2o, "O2": o2, "N2": 1 - co2 - h2o - o2}
        gas.TPX = 298.15, ATMOSPHERE, shares
        zero = gas.enthalpy_mass
        for t in TEMPERATURES:
            gas.TPX = t, ATMOSPHERE, shares
            yield (
                f"{name},{t},{co2:.6f},{h2o:.6f},{o2:.6f},{gas.cp_mass:.2f},"
                f"{gas.enthalpy_mass - zero:.1f},{gas.viscosity:.5e},{gas.thermal_conductivity:.5f}"
            )


def pure():
    yield f"# Pure gases by reference equations: CoolProp {CoolProp.__version__}, ideal-gas limit (100 Pa)."
    yield "# Regenerate with tools/gas_grid.py."
    yield "gas,T K,cp J/(kg K),mu Pa s,k W/(m K)"
    fluids = {"CO2": "CarbonDioxide", "H2O": "Water", "O2": "Oxygen", "N2": "Nitrogen"}
    for gas in GASES:
        for t in [400, 500, 600, 800, 1000, 1200, 1500, 1900]:
            at = ("T", t, "P", 100.0, fluids[gas])
            cp, mu, k = (PropsSI(what, *at) for what in ("C", "V", "L"))
            yield f"{gas},{t},{cp:.2f},{mu:.5e},{k:.5f}"


def fitted(t, y):
    """A, B, C, D of ln y = A ln T + B/T + C/T^2 + D by least squares."""
    columns = numpy.column_stack([numpy.log(t), 1 / t, 1 / t**2, numpy.ones_like(t)])
    return numpy.linalg.lstsq(columns, numpy.log(y), rcond=None)[0]


def fits(gas):
    yield "//! Viscosity and conductivity of the pure gases by kinetic theory, fitted as"
    yield "//! ln y = A ln T + B/T + C/T^2 + D: sums made elsewhere on that theory are repeated on it,"
    yield "//! and so test the code apart from the data."
    yield "//!"
    yield f"//! Independent calculation: cantera {cantera.__version__}, gri30.yaml. Written by"
    yield "//! tools/gas_grid.py."
    yield ""
    yield "use formulas::gas::{PureLaw, Transport};"
    yield ""
    yield "/// Carbon dioxide, water vapour, oxygen, nitrogen; 300 to 2500 K."
    yield "pub(crate) static KINETIC_THEORY: [PureLaw; 4] = ["
    yield "    |t| at(&CARBON_DIOXIDE, t),"
    yield "    |t| at(&WATER_VAPOUR, t),"
    yield "    |t| at(&OXYGEN, t),"
    yield "    |t| at(&NITROGEN, t),"
    yield "];"
    yield ""
    yield "/// Viscosity in micropoise below and above 1000 K, then conductivity in µW/(cm K)."
    yield "type Fits = [[f64; 4]; 4];"
    yield ""
    yield "fn at(fits: &Fits, t: f64) -> Transport {"
    yield "    let value = |[a, b, c, d]: [f64; 4]| (a * t.ln() + b / t + c / (t * t) + d).exp();"
    yield "    let side = usize::from(t > 1000.0);"
    yield "    Transport {"
    yield "        viscosity: 1e-7 * value(fits[side]),"
    yield "        conductivity: 1e-4 * value(fits[2 + side]),"
    yield "    }"
    yield "}"
    ranges = [numpy.linspace(300, 1000, 71), numpy.linspace(1000, 2500, 76)]
    for name in GASES:
        yield ""
        yield f"static {NAMES[name].upper().replace(' ', '_')}: Fits = ["
        for what, scale in (("viscosity", 1e7), ("conductivity", 1e4)):
            for t in ranges:
                y = []
                for x in t:
                    gas.TPX = x, ATMOSPHERE, {name: 1.0}
                    y.append(scale * (gas.viscosity if what == "viscosity" else gas.thermal_conductivity))
                a, b, c, d = fitted(t, numpy.array(y))
                yield f"    [{a:.6f}, {b:.4f}, {c:.2f}, {d:.6f}],"
        yield "];"


def main():
    gas = solution()
    for path, lines in (
        ("data/flue-gas-grid.csv", mixtures(gas)),
        ("data/pure-gas-grid.csv", pure()),
        ("kinetic_theory/mod.rs", fits(gas)),
    ):
        target = TESTS / path
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text("\n".join(lines) + "\n", encoding="utf-8")


main()
