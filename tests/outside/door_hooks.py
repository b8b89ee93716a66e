"""What schemathesis loads. It signs each request, where it is told with which key, so that it gets
behind the door; and it writes JSON Lines, from any text to records that are almost good.
"""

import json
import os
import zlib

import schemathesis
from jwcrypto import jwk

from asks import Signed
from author import Author, json_lines

if key := os.environ.get("DOOR_KEY"):
    schemathesis.auth.set_from_requests(Signed(jwk.JWK.from_json(key)))

# A stranger's records: their form is good, and the door knows nothing of their author.
STRANGER = Author("A stranger at the door")
STRANGER.describes("01980000-0000-7000-8000-00000000d00f", "Invented")
LINES = json_lines(STRANGER.lines)


def bent(text: str) -> str:
    """Records with a generated text put in somewhere, as chance would have it but the same each time."""
    at = zlib.crc32(text.encode(errors="replace"))
    kept = [
        text,
        LINES,
        LINES + text,
        json.dumps(STRANGER.lines[0] | {"payload": text}) + "\n",
        json.dumps(STRANGER.lines[0] | {"protected": text}) + "\n",
        json.dumps(STRANGER.lines[0] | {"signature": text}) + "\n",
        LINES[: at % len(LINES)] + text + LINES[at % len(LINES) :],
    ]
    return kept[at % len(kept)]


@schemathesis.serializer("application/jsonl")
def jsonl(_context, value):
    return bent(value if isinstance(value, str) else json.dumps(value)).encode(errors="replace")
