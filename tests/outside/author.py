"""A device that isn't ours: PyPI's jwcrypto signs its records, PyPI's rfc8785 writes them.

Standards: RFC 7515 (JWS), RFC 7797 (unencoded payload), RFC 9864 (Ed25519), RFC 7638 (thumbprint),
RFC 8785 (canonical JSON), RFC 9562 (UUID version 7).
"""

import datetime
import hashlib
import json
import secrets
import time
import uuid

import rfc8785
from jwcrypto import jwk, jws


def new_key() -> jwk.JWK:
    return jwk.JWK.generate(kty="OKP", crv="Ed25519")


def public(key: jwk.JWK) -> dict:
    """The members of RFC 8037 § 2 and no others."""
    exported = json.loads(key.export_public())
    return {name: exported[name] for name in ("crv", "kty", "x")}


def uuid7() -> str:
    bits = (int(time.time() * 1000) << 80) | secrets.randbits(80)
    bits = bits & ~(0xF << 76) | 7 << 76
    return str(uuid.UUID(int=bits & ~(0x3 << 62) | 2 << 62))


def digest_of(line: dict) -> str:
    """A record's name: the SHA-256 of its payload's bytes."""
    return hashlib.sha256(line["payload"].encode()).hexdigest()


def json_lines(lines: list) -> str:
    return "".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines)


class Author:
    """A device and all that it has signed. Its first record states its key."""

    def __init__(self, name: str):
        self.key, self.courier = new_key(), new_key()
        self.device = self.key.thumbprint()
        self.lines: list = []
        # Count and last digest of the records about each machine, and about none ("").
        self.of_last: dict = {}
        member = {"person": uuid7(), "name": name, "key": public(self.key), "invented": True}
        self.write("member", member)

    def write(self, kind: str, body: dict, machine: str = "") -> dict:
        """Signs a fact; the envelope."""
        seq, before = len(self.lines) + 1, self.lines and digest_of(self.lines[-1])
        of_seq, of_before = self.of_last.get(machine, (0, None))
        now = datetime.datetime.now(datetime.timezone.utc)
        payload = {
            "v": 1,
            "kind": kind,
            "id": uuid7(),
            "device": self.device,
            "seq": seq,
            "of_seq": of_seq + 1,
            "seen": {},
            "at": now.isoformat(timespec="seconds"),
            "clock": {"ms": int(now.timestamp() * 1000), "n": seq},
            "body": body,
        }
        payload |= {"machine": machine} if machine else {}
        payload |= {"prev": before} if before else {}
        payload |= {"of_prev": of_before} if of_before else {}
        canonical = rfc8785.dumps(payload).decode()
        token = jws.JWS(canonical)
        token.allowed_algs = ["Ed25519"]
        header = {"alg": "Ed25519", "b64": False, "crit": ["b64"], "kid": self.device}
        # The header too: what a code leaves out is written again in this form.
        token.add_signature(self.key, protected=rfc8785.dumps(header).decode())
        line = json.loads(token.serialize())
        self.lines.append(line)
        self.of_last[machine] = (of_seq + 1, digest_of(line))
        return line

    def joins(self, school: str) -> dict:
        return self.write("school-joined", {"school": school, "courier": public(self.courier)})

    def describes(self, machine: str, name: str) -> dict:
        fitted = {"reserve": ""}
        body = {"name": name, "engine": "bramble-125", "fitted": fitted, "hours": 12.5, "flights": 3, "invented": True}
        return self.write("machine", body, machine)
