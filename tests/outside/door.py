"""The server against its own OpenAPI document: PyPI's openapi-spec-validator reads it, schemathesis
makes requests of it, as nobody and as a member, good ones and bad ones. Seeded and bounded.

    door.py WITNESSMARK
"""

import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

from openapi_spec_validator import OpenAPIV31SpecValidator

from asks import Server
from author import Author, json_lines
from records import keys_of, verifies
from school import school
from tally import check, done

HERE = pathlib.Path(__file__).parent
SEED = "20260502"
# The server's own limit for who signs nothing is 50 requests a second.
RATE = "45/s"


def main(program: str) -> None:
    with school(program) as (root, address):
        server = Server(address)
        document = server.ask("GET", "/v1/openapi.json").json()
        errors = [error.message for error in OpenAPIV31SpecValidator(document).iter_errors()]
        check("the OpenAPI document is one", not errors, "; ".join(errors[:3]))
        knock("nobody", address, None)
        member = Author("Outside knocker")
        member.joins(server.ask("GET", "/v1/school").json()["school"])
        server.ask("POST", "/v1/waiting", json_lines(member.lines))
        root.admit("Outside knocker", "instructor")
        server.ask("POST", "/v1/waiting", json_lines(member.lines))
        knock("a member", address, member.key.export())
        answer = server.ask("GET", "/health")
        check("the server is well after all that", answer.text == "ok\n", answer.text)
        page = server.ask("GET", "/v1/log?from=0&own=whole", key=member.key).text
        log = [json.loads(line) for line in page.splitlines()]
        good = [verifies(line, keys_of(log), ["Ed25519"]) for line in log]
        check("and its log holds good records only", all(good) and len(log) >= 6, f"{good.count(False)} of {len(log)}")
    done()


def knock(who: str, address: str, key) -> None:
    """One run of schemathesis, in a folder of its own: it keeps what it found beside it."""
    program = pathlib.Path(sys.executable).parent / "st"
    asked = ["--seed", SEED, "--max-examples", "30", "--rate-limit", RATE, "--workers", "1", "--no-shrink"]
    asked += ["--phases", "examples,coverage,fuzzing", "--warnings", "off"]
    told = {"SCHEMATHESIS_HOOKS": "door_hooks", "PYTHONPATH": str(HERE), "NO_COLOR": "1", "COLUMNS": "200"}
    told |= {"DOOR_KEY": key} if key else {}
    with tempfile.TemporaryDirectory() as folder:
        command = [program, "--config-file", HERE / "door.toml", "run", f"{address}/v1/openapi.json", *asked]
        ran = subprocess.run(
            command, cwd=folder, env=os.environ | told, capture_output=True, text=True, check=False, timeout=900
        )
    found = re.findall(r"^- (.+)$", ran.stdout, re.MULTILINE)
    made = re.search(r"(\d+) generated", ran.stdout)
    cases = int(made[1]) if made else 0
    check(f"schemathesis as {who} finds nothing amiss", ran.returncode == 0, "; ".join(sorted(set(found))[:8]))
    check(f"schemathesis as {who} has made its requests", cases > 500, f"{cases}")
    if ran.returncode != 0:
        print(ran.stdout[-20_000:], ran.stderr[-2_000:], file=sys.stderr)


if __name__ == "__main__":
    main(sys.argv[1])
