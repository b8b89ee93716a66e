"""Conversions between every two units of one dimension, by pint, as tests/vectors/units.json.

    units.py          writes the file
    units.py --check  fails when the file is not what pint says today

pint reckons here with exact fractions, from the definitions of inch, pound and standard
gravity; so the figures are right to the last digit that a double has.
"""

import json
import pathlib
import sys
from fractions import Fraction

import pint

FILE = pathlib.Path(__file__).resolve().parents[1] / "vectors" / "units.json"

# Our codes, by dimension, and what pint calls them.
UNITS = {
    "torque": {
        "N.m": "newton * meter",
        "lbf.in": "force_pound * inch",
        "lbf.ft": "force_pound * foot",
        "kgf.m": "force_kilogram * meter",
        "kgf.cm": "force_kilogram * centimeter",
    },
    "length": {"m": "meter", "mm": "millimeter", "in": "inch", "ft": "foot"},
    "temperature": {"K": "kelvin", "Cel": "degree_Celsius", "degF": "degree_Fahrenheit"},
    "pressure": {
        "Pa": "pascal",
        "hPa": "hectopascal",
        "bar": "bar",
        "MPa": "megapascal",
        "psi": "pound_force_per_square_inch",
        "inHg": "inch_Hg",
    },
    "voltage": {"V": "volt"},
    "time": {"s": "second", "h": "hour", "d": "day"},
    "volume": {
        "L": "liter",
        "mL": "milliliter",
        "m3": "meter ** 3",
        "gal_us": "US_liquid_gallon",
        "gal_br": "imperial_gallon",
    },
    "mass": {"kg": "kilogram", "lb": "pound"},
    "force": {"N": "newton", "kN": "kilonewton", "lbf": "force_pound"},
    "area": {"m2": "meter ** 2", "mm2": "millimeter ** 2", "in2": "inch ** 2"},
    "frequency": {"1/min": "1 / minute"},
    "speed": {"m/s": "meter / second", "km/h": "kilometer / hour", "kt": "knot"},
    "density": {"kg/m3": "kilogram / meter ** 3"},
    "flow": {"L/h": "liter / hour"},
    "angle": {"deg": "degree"},
    "ratio": {"%": "percent", "1": "dimensionless"},
}
# The coherent SI unit of each dimension.
SI = {
    "torque": "newton * meter",
    "length": "meter",
    "temperature": "kelvin",
    "pressure": "pascal",
    "voltage": "volt",
    "time": "second",
    "volume": "meter ** 3",
    "mass": "kilogram",
    "force": "newton",
    "area": "meter ** 2",
    "frequency": "1 / second",
    "speed": "meter / second",
    "density": "kilogram / meter ** 3",
    "flow": "meter ** 3 / second",
    "angle": "radian",
    "ratio": "dimensionless",
}
VALUES = [Fraction(1), Fraction(125), Fraction(1, 40), Fraction("12.7"), Fraction(-40)]


def table() -> list:
    registry = pint.UnitRegistry(non_int_type=Fraction)

    def convert(value: Fraction, source: str, target: str) -> float:
        return float(registry.Quantity(value, source).to(target).magnitude)

    rows = []
    for dimension, units in UNITS.items():
        for code, name in units.items():
            for value in VALUES:
                # Nothing is colder than absolute zero: ours refuses it, and pint doesn't.
                if dimension == "temperature" and convert(value, name, SI[dimension]) < 0:
                    continue
                rows.append([float(value), code, "SI", convert(value, name, SI[dimension])])
                for other_code, other in units.items():
                    rows.append([float(value), code, other_code, convert(value, name, other)])
    return rows


def main() -> int:
    lines = ",\n".join(json.dumps(row, ensure_ascii=False) for row in table())
    text = (
        '{ "made_by": "tests/outside/units.py with pint ' + pint.__version__ + '",\n'
        '  "row": ["value", "from", "to (SI: the coherent unit)", "pint says"],\n'
        '  "rows": [\n' + lines + "\n] }\n"
    )
    if "--check" in sys.argv:
        current = FILE.read_text() == text
        print("units: the fixture is what pint says" if current else "units: run tests/outside/units.py, the fixture is old")
        return 0 if current else 1
    FILE.write_text(text)
    return 0


if __name__ == "__main__":
    sys.exit(main())
