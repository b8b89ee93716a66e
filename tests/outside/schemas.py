"""Every TOML file of the catalogue against its JSON Schema, by PyPI's jsonschema and Python's own
TOML reader; and data sheets with a fault, which both the schema and our program refuse.

    schemas.py WITNESSMARK
"""

import json
import pathlib
import subprocess
import sys
import tempfile
import tomllib

from jsonschema import Draft202012Validator

from tally import check, done

CATALOGUE = pathlib.Path(__file__).resolve().parents[2] / "shared" / "catalogue"

# Which files each schema is for.
FILES = {
    "assembly.json": "assembly/*.toml",
    "engine.json": "engines/*.toml",
    "fragment.json": "fragments/*.toml",
    "stations.json": "stations.toml",
    "occasions.json": "occasions.toml",
    "measures.json": "measures.toml",
    "limits.json": "limits.toml",
}

GOOD = """id = "invented"
name = "Invented"
kind = "two-stroke"

[bands.head-nut-torque]
critical = true
low = { value = 125, unit = "lbf.in", unconfirmed = "common practice, no source" }
high = { value = 130, unit = "lbf.in", source = { document = "invented manual", page = "7" } }
"""

# One fault each: what is put in the good sheet's place, and the line on which it then stands.
# In the form, which a schema can see:
FORM = {
    "unknown unit": ('unit = "lbf.in", uncon', 'unit = "ft.lb", uncon', 7),
    "number as text": ("value = 125", 'value = "125"', 7),
    "unknown member": ("critical = true", "important = true", 6),
    "unknown kind of engine": ('"two-stroke"', '"steam"', 3),
    "source without a page": (', page = "7"', "", 8),
    "no name": ('name = "Invented"\n', "", 1),
}
# In the sense, which only the program sees:
SENSE = {
    "low above high": ("value = 125", "value = 135", 5),
    "neither source nor unconfirmed": (', unconfirmed = "common practice, no source"', "", 5),
    "both source and unconfirmed": ('page = "7" }', 'page = "7" }, unconfirmed = "why"', 5),
    "ends of two kinds": ('130, unit = "lbf.in"', '130, unit = "mm"', 5),
    "an id that is none": ('"invented"', '"Invented!"', 1),
}


def validator(name: str) -> Draft202012Validator:
    schema = json.loads((CATALOGUE / "schema" / name).read_text())
    Draft202012Validator.check_schema(schema)
    return Draft202012Validator(schema)


def catalogue() -> None:
    covered = set()
    for name, pattern in FILES.items():
        valid = validator(name)
        for file in sorted(CATALOGUE.glob(pattern)):
            covered.add(file)
            errors = [error.message for error in valid.iter_errors(tomllib.loads(file.read_text()))]
            check(f"{file.relative_to(CATALOGUE)} is what {name} says", not errors, "; ".join(errors[:3]))
    known = {file for file in CATALOGUE.rglob("*.toml") if file.parent.name != "demo"}
    missed = sorted(str(file.relative_to(CATALOGUE)) for file in known - covered)
    schemas = {file.name for file in (CATALOGUE / "schema").glob("*.json")}
    check("every TOML file has a schema, and every schema files", not missed and schemas == set(FILES), str(missed))


def sheets(program: str) -> None:
    valid = validator("engine.json")

    def ours(text: str) -> tuple:
        with tempfile.NamedTemporaryFile("w", suffix=".toml") as file:
            file.write(text)
            file.flush()
            run = subprocess.run([program, "validate", file.name], capture_output=True, text=True, check=False)
            return run.returncode, run.stdout + run.stderr, file.name

    code, told, _ = ours(GOOD)
    check("the good sheet: both take it", code == 0 and valid.is_valid(tomllib.loads(GOOD)), told)
    for faults, by_schema in ((FORM, True), (SENSE, False)):
        for what, (old, new, line) in faults.items():
            text = GOOD.replace(old, new)
            assert text != GOOD, what
            code, told, name = ours(text)
            check(f"{what}: our program refuses it and names line {line}", code == 1 and f"{name}:{line}:" in told, told)
            taken = valid.is_valid(tomllib.loads(text))
            if by_schema:
                check(f"{what}: the schema refuses it", not taken)


if __name__ == "__main__":
    catalogue()
    sheets(sys.argv[1])
    done()
