"""What a server's word about its log proves: the tree by PyPI's pymerkle, signatures by PyPI's
cryptography, proofs by the algorithms of RFC 9162 in so many words.

Standards: RFC 9162 §§ 2.1.1, 2.1.3.2, 2.1.4.2 (the tree of RFC 6962); C2SP signed-note, tlog-checkpoint.
"""

import hashlib
from base64 import b64decode

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey
from pymerkle import InmemoryTree


def root_of(leaves: list) -> bytes:
    """The root of these leaves, hexadecimal, by a library that knows nothing of us."""
    tree = InmemoryTree(algorithm="sha256")
    for leaf in leaves:
        tree.append_entry(bytes.fromhex(leaf))
    return tree.get_root()


def node(left: bytes, right: bytes) -> bytes:
    return hashlib.sha256(b"\x01" + left + right).digest()


def included(leaf: str, index: int, size: int, path: list, root: bytes) -> bool:
    """RFC 9162 § 2.1.3.2."""
    if index >= size:
        return False
    at, last = index, size - 1
    reckoned = hashlib.sha256(b"\x00" + bytes.fromhex(leaf)).digest()
    for step in map(bytes.fromhex, path):
        if last == 0:
            return False
        if at & 1 or at == last:
            reckoned = node(step, reckoned)
            while not at & 1 and at:
                at, last = at >> 1, last >> 1
        else:
            reckoned = node(reckoned, step)
        at, last = at >> 1, last >> 1
    return last == 0 and reckoned == root


def consistent(first: int, second: int, path: list, first_root: bytes, second_root: bytes) -> bool:
    """RFC 9162 § 2.1.4.2, for 0 < first < second."""
    steps = list(map(bytes.fromhex, path))
    if first & (first - 1) == 0:
        steps.insert(0, first_root)
    if not steps:
        return False
    at, last = first - 1, second - 1
    while at & 1:
        at, last = at >> 1, last >> 1
    older = newer = steps[0]
    for step in steps[1:]:
        if last == 0:
            return False
        if at & 1 or at == last:
            older, newer = node(step, older), node(step, newer)
            while not at & 1 and at:
                at, last = at >> 1, last >> 1
        else:
            newer = node(newer, step)
        at, last = at >> 1, last >> 1
    return last == 0 and older == first_root and newer == second_root


def opened(note: str, verifier: str) -> tuple:
    """Origin, size and root of a checkpoint; ValueError where the key hasn't signed it."""
    name, keyid, key = verifier.split("+", 2)
    key = b64decode(key, validate=True)
    reckoned = hashlib.sha256(name.encode() + b"\n" + key).digest()[:4]
    text, _, signatures = note.rpartition("\n\n")
    text += "\n"
    origin, size, root = text.split("\n")[:3]
    lines = [line.split(" ") for line in signatures.splitlines()]
    ours = [b64decode(signature) for dash, named, signature in lines if dash == "—" and named == name]
    if keyid != reckoned.hex() or key[0] != 1 or origin != name or not ours or ours[0][:4] != reckoned:
        raise ValueError("another key's, or no checkpoint")
    try:
        Ed25519PublicKey.from_public_bytes(key[1:]).verify(ours[0][4:], text.encode())
    except InvalidSignature as why:
        raise ValueError("forged") from why
    return origin, int(size), b64decode(root, validate=True)
