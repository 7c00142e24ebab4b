#!/usr/bin/env python3
"""Writes the grid of steam properties with which the equations of `formulas::steam` are compared.

The values come from the general formulation of 1995 (IAPWS R6-95), which is independent of the
industrial one that the project uses, by the library CoolProp (`pip install CoolProp==8.0.0`).

    python3 tools/steam_grid.py > crates/formulas/tests/data/steam-grid-iapws-95.csv
"""

import CoolProp
from CoolProp.CoolProp import PropsSI

FLUID = "HEOS::Water"
BAR = [0.05, 0.1, 0.2, 0.5, 1.0, 1.5, 2.0, 3.0, 5.0, 7.0, 10.0, 15.0, 20.0, 25.0, 30.0]
LIQUID_C = [5.0, 20.0, 50.0, 80.0, 110.0, 150.0, 180.0, 220.0]
DRYNESS = [0.0, 0.02, 0.1, 0.3, 0.5, 0.8, 0.95, 1.0]
SUPERHEAT_K = [2.0, 10.0, 30.0, 80.0]
STEAM_C = [250.0, 300.0, 400.0, 500.0, 600.0]
COLUMNS = "phase,p_pa,x,t_k,h_j_kg,s_j_kg_k,rho_kg_m3,cp_j_kg_k,mu_pa_s,lambda_w_m_k"


def row(phase, p, x, second, value):
    """One line: a mixture has no specific heat, viscosity or conductivity of its own."""

    def get(name):
        return f"{PropsSI(name, 'P', p, second, value, FLUID):.12g}"

    one_phase = phase != "wet" or x in (0.0, 1.0)
    cells = [phase, f"{p:.12g}", "" if x is None else f"{x:g}"]
    cells += [get(name) for name in ("T", "H", "S", "D")]
    cells += [get(name) if one_phase else "" for name in ("C", "V", "L")]
    return ",".join(cells)


def main():
    """Prints the header and the rows."""
    print("# Water and steam by the formulation of 1995 (IAPWS R6-95, viscosity R12-08,")
    print("# conductivity R15-11).")
    print(f"# Made by tools/steam_grid.py with CoolProp {CoolProp.__version__}, back end HEOS.")
    print(COLUMNS)
    for bar in BAR:
        p = bar * 1e5
        boiling = PropsSI("T", "P", p, "Q", 0.0, FLUID)
        for celsius in LIQUID_C:
            if celsius + 273.15 < boiling - 1.0:
                print(row("liquid", p, None, "T", celsius + 273.15))
        for x in DRYNESS:
            print(row("wet", p, x, "Q", x))
        for t in [boiling + k for k in SUPERHEAT_K] + [c + 273.15 for c in STEAM_C]:
            if t > boiling + 1.0:
                print(row("superheated", p, None, "T", t))


if __name__ == "__main__":
    main()
