"""Our records in the hands of PyPI's jwcrypto, which knows nothing of us.

    records.py verify BUNDLE…     verifies bundles that we wrote, and refuses altered ones
    records.py sign BUNDLE        writes a bundle of its own, for us to verify

Standards: RFC 7515 (JWS), RFC 7797 (unencoded payload), RFC 9864 (Ed25519), RFC 7638 (thumbprint).
"""

import json
import pathlib
import sys

from jwcrypto import jwk, jws
from jwcrypto.common import base64url_decode, base64url_encode, json_encode

from author import Author, digest_of, json_lines
from tally import check, done


def keys_of(lines: list) -> dict:
    """Every device's key, as its own member record states it, by the thumbprint reckoned here."""
    keys = {}
    for line in lines:
        payload = json.loads(line["payload"])
        if payload["kind"] == "member":
            key = jwk.JWK(**payload["body"]["key"])
            keys[key.thumbprint()] = key
    return keys


def verifies(line: dict, keys: dict, algs: list) -> bool:
    """Whether jwcrypto takes the line, under the key that its header names."""
    try:
        token = jws.JWS()
        token.allowed_algs = algs
        token.deserialize(json.dumps(line))
        token.verify(keys[token.jose_header["kid"]])
        return token.payload == line["payload"]
    except (jws.InvalidJWSObject, jws.InvalidJWSSignature, KeyError, ValueError):
        return False


def altered(line: dict) -> dict:
    """The same line, wrong in one way each."""

    def flipped(text: str, at: int) -> str:
        return text[:at] + ("A" if text[at] != "A" else "B") + text[at + 1 :]

    header = json.loads(base64url_decode(line["protected"]))
    encoded = {**header, "b64": True}
    return {
        "payload": {**line, "payload": line["payload"].replace('"seq":', '"seq":1')},
        "payload with a space": {**line, "payload": line["payload"] + " "},
        "signature": {**line, "signature": flipped(line["signature"], 40)},
        "header": {**line, "protected": flipped(line["protected"], 60)},
        "header with b64 true": {**line, "protected": base64url_encode(json_encode(encoded))},
        "header without alg": {
            **line,
            "protected": base64url_encode(json_encode({k: v for k, v in header.items() if k != "alg"})),
        },
    }


def verify(file: str) -> None:
    name = pathlib.Path(file).name
    lines = [json.loads(line) for line in pathlib.Path(file).read_text().splitlines()]
    keys = keys_of(lines)
    check(f"{name}: has records and keys", len(lines) > 3 and len(keys) > 0, f"{len(lines)}, {len(keys)}")
    good = [verifies(line, keys, ["Ed25519"]) for line in lines]
    check(f"{name}: jwcrypto verifies every line", all(good), f"{good.count(False)} of {len(good)} refused")
    devices = [json.loads(line["payload"])["device"] for line in lines]
    named = [json.loads(base64url_decode(line["protected"]))["kid"] for line in lines]
    check(f"{name}: every device is a thumbprint of a key in the file", devices == named and set(devices) <= set(keys))
    others = [kid for kid in keys if kid != named[-1]]
    if others:
        stolen = verifies(lines[-1], {named[-1]: keys[others[0]]}, ["Ed25519"])
        check(f"{name}: jwcrypto refuses another's key", not stolen)
    for what, line in altered(lines[-1]).items():
        check(f"{name}: jwcrypto refuses an altered {what}", not verifies(line, keys, ["Ed25519"]))
    check(f"{name}: the chains hold", chains(lines))


def chains(lines: list) -> bool:
    """Both chains, reckoned with nothing but SHA-256: each record names the digest of the one before."""
    by_place = {}
    for line in lines:
        payload = json.loads(line["payload"])
        digest = digest_of(line)
        by_place[payload["device"], payload.get("machine"), payload["of_seq"]] = (digest, payload)
    for (device, machine, place), (_, payload) in by_place.items():
        before = by_place.get((device, machine, place - 1))
        if payload.get("of_prev") != (before[0] if before else None):
            return False
        if place > 1 and before is None:
            return False
    return True


def sign(file: str) -> None:
    """A member record and a machine's, made with jwcrypto alone."""
    author = Author("An invented pilot, written by Python: äöü")
    author.describes("01980000-0000-7000-8000-00000000abcd", "Written elsewhere")
    pathlib.Path(file).write_text(json_lines(author.lines), encoding="utf-8")


def main() -> None:
    verb, *files = sys.argv[1:]
    if verb == "sign":
        sign(files[0])
        return
    for file in files:
        verify(file)
    # Which names of the algorithm it takes: ours, once allowed; the polymorphic one is another.
    line = json.loads(pathlib.Path(files[0]).read_text().splitlines()[0])
    keys = keys_of([line])
    check("jwcrypto takes the alg name Ed25519", verifies(line, keys, ["Ed25519"]))
    check("jwcrypto does not take Ed25519 for EdDSA", not verifies(line, keys, ["EdDSA"]))
    done()


if __name__ == "__main__":
    main()
