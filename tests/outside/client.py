"""A school's server in the hands of a client that isn't ours: joining, sending, following, proving,
pictures, and what must be refused.

    client.py WITNESSMARK
"""

import gzip
import hashlib
import json
import random
import sys
from datetime import datetime, timedelta

import zstandard

from asks import COVERED, Server, Signed, kind_of
from author import Author, digest_of, json_lines
from proofs import consistent, included, opened, root_of
from records import keys_of, verifies
from school import school
from tally import check, done

# With the root's own three records the log gets beyond one page and one level of whole subtrees.
RECORDS = 230


def main(program: str) -> None:
    with school(program) as (root, address):
        server = Server(address)
        card = joining(root, server, pilot := Author("Outside pilot"))
        sending(server, pilot)
        following(server, pilot, card)
        pictures(server, pilot)
        refusing(server, pilot)
        ending(root, server, pilot)
    done()


def checkpoint(server: Server, card: dict) -> tuple:
    return opened(server.ask("GET", "/v1/checkpoint").text, card["server"])


def joining(root, server: Server, pilot: Author) -> dict:
    card = server.ask("GET", "/v1/school").json()
    keys = keys_of(card["records"])
    founding = next(line for line in card["records"] if digest_of(line) == card["school"])
    body = json.loads(founding["payload"])
    check("the card's school is the digest of its founding", body["kind"] == "school-founded")
    good = all(verifies(line, keys, ["Ed25519"]) for line in card["records"])
    check("jwcrypto verifies the card's records", good and len(card["records"]) >= 2)
    origin, _, _ = checkpoint(server, card)
    check("cryptography verifies the checkpoint", origin == f"witnessmark.org/school/{card['school']}")
    altered = server.ask("GET", "/v1/checkpoint").text.replace("\n\n", "\nmore\n\n", 1)
    try:
        refused = not opened(altered, card["server"])
    except ValueError as why:
        refused = str(why) == "forged"
    check("cryptography refuses an altered checkpoint", refused)

    pilot.joins(card["school"])
    introduction = json_lines(pilot.lines)
    answer = server.ask("POST", "/v1/waiting", introduction)
    check("a device that isn't ours may wait", answer.status_code == 202, answer.text)
    answer = server.ask("GET", "/v1/log?from=0", key=pilot.courier)
    check("who waits is shown nothing", kind_of(answer) == (401, "unknown-key"), answer.text)
    root.admit("Outside pilot", "pilot")
    answer = server.ask("POST", "/v1/waiting", introduction)
    check("who was admitted is let in", answer.status_code == 200, answer.text)
    answer = server.ask("GET", "/v1/waiting", key=pilot.courier)
    check("only the root sees who waits", kind_of(answer) == (403, "not-the-root"), answer.text)
    return card


def sending(server: Server, pilot: Author) -> None:
    machine = "01980000-0000-7000-8000-00000000fade"
    before = len(pilot.lines)
    for n in range(RECORDS):
        pilot.describes(machine, f"Invented machine, äöü {n}")
    sent = pilot.lines[before:]
    altered = sent[7] | {"payload": sent[7]["payload"].replace("äöü 7", "äöü 8")}
    answer = server.ask("POST", "/v1/records", json_lines([*sent, altered]), pilot.courier).json()
    taken = [one["digest"] for one in answer["taken"]]
    check("every record is taken, in order", taken == [digest_of(line) for line in sent], str(answer["refused"]))
    places = [one["index"] for one in answer["taken"]]
    check("they follow each other in the log", places == list(range(places[0], places[0] + RECORDS)))
    told = [(one["line"], one["kind"]) for one in answer["refused"]]
    check("an altered one is refused, and no other", told == [(RECORDS + 1, "bad-signature")], str(told))
    again = server.ask("POST", "/v1/records", json_lines(sent), pilot.courier).json()
    check("sent again, they are where they are", again["taken"] == answer["taken"] and not again["refused"])
    stranger = Author("A stranger")
    joined = stranger.describes(machine, "by a stranger")
    told = server.ask("POST", "/v1/records", json_lines([joined]), pilot.courier).json()["refused"]
    check("a record by an unknown key is refused", [one["kind"] for one in told] == ["unknown-key"], str(told))


def pages(server: Server, key, own: str = "") -> list:
    """The whole log, page by page."""
    lines: list = []
    while page := server.ask("GET", f"/v1/log?from={len(lines)}{own}", key=key).text.splitlines():
        lines += map(json.loads, page)
    return lines


def following(server: Server, pilot: Author, card: dict) -> None:
    _, size, root = checkpoint(server, card)
    log = pages(server, pilot.courier, "&own=whole")
    short = pages(server, pilot.courier)
    leaves = [digest_of(line) for line in log]
    mine = {digest_of(line) for line in pilot.lines}
    named = [line["have"] for line in short if "have" in line]
    rest = [line for line in short if "have" not in line]
    check("the log is as long as the checkpoint says", len(log) == size, f"{len(log)}, {size}")
    check("pymerkle's root is the checkpoint's", root_of(leaves) == root)
    check("pymerkle's root of any other log is not", root_of([leaves[1], leaves[0], *leaves[2:]]) != root)
    check("own records are only named, others whole", set(named) == mine and len(rest) + len(named) == size)
    keys = keys_of(log)
    good = [verifies(line, keys, ["Ed25519"]) for line in log]
    check("jwcrypto verifies every record of the log", all(good), f"{good.count(False)} of {size}")

    def proof(path: str) -> dict:
        return server.ask("GET", f"/v1/proof/{path}", key=pilot.courier).json()

    some = random.Random(1)
    for at in sorted({0, size - 1, *some.sample(range(size), 12)}):
        told = proof(f"inclusion?digest={leaves[at]}&size={size}")
        good = told["index"] == at and included(leaves[at], at, size, told["path"], root)
        bent = [*told["path"][:-1], leaves[0]]
        check(f"record {at} is proven to be in the log", good and not included(leaves[at], at, size, bent, root))
    for first in sorted({1, 2, 64, 128, size - 1, *some.sample(range(3, size), 8)}):
        path = proof(f"consistency?from={first}&to={size}")["path"]
        older = root_of(leaves[:first])
        good = consistent(first, size, path, older, root)
        bent = consistent(first, size, path, root_of(leaves[1 : first + 1]), root)
        check(f"the log of {first} records is proven to be its beginning", good and not bent)

    request = Signed(pilot.courier).sign(server.prepared("GET", "/v1/log?from=0", Accept_Encoding="identity"))
    plain = server.send(request).content
    for coding, read in {"gzip": gzip.decompress, "zstd": unzstd}.items():
        ask = server.prepared("GET", "/v1/log?from=0", Accept_Encoding=coding)
        answer = server.session.send(Signed(pilot.courier).sign(ask), stream=True, timeout=30)
        raw = answer.raw.read(decode_content=False)
        same = answer.headers.get("Content-Encoding") == coding and read(raw) == plain
        check(f"a page by {coding} is the same page, shorter", same and len(raw) < len(plain))
    tag = server.ask("GET", "/v1/checkpoint").headers["ETag"]
    answer = server.ask("GET", "/v1/checkpoint", If_None_Match=tag)
    check("nothing new is told by 304", answer.status_code == 304 and not answer.content)


def unzstd(raw: bytes) -> bytes:
    return zstandard.ZstdDecompressor().decompressobj().decompress(raw)


def pictures(server: Server, pilot: Author) -> None:
    photo = b"\x89PNG\r\n\x1a\n" + random.Random(2).randbytes(300_000)
    total, part = len(photo), 128 * 1024
    path = f"/v1/photo/{hashlib.sha256(photo).hexdigest()}"

    def ask(method: str, path: str = path, body=None, **headers):
        return server.ask(method, path, body, pilot.courier, **headers)

    def put(path: str, first: int, piece: bytes):
        told = f"bytes {first}-{first + len(piece) - 1}/{total}"
        return ask("PUT", path, piece, Content_Type="image/png", Content_Range=told).status_code

    check("a picture that nobody sent isn't there", ask("HEAD").status_code == 404)
    check("a first part is taken", put(path, 0, photo[:part]) == 202)
    half = ask("HEAD")
    check("how much has come is told", (half.status_code, half.headers["Content-Length"]) == (206, str(part)))
    check("a part with a gap before it is refused", put(path, 2 * part, photo[2 * part :]) == 409)
    steps = [put(path, first, photo[first : first + part]) for first in (part, 2 * part)]
    check("the last part makes it whole", steps == [202, 201], str(steps))
    check("that it is whole is told", ask("HEAD").status_code == 200)
    come = b""
    while len(come) < total:
        answer = ask("GET", Range=f"bytes={len(come)}-{len(come) + part - 1}")
        told = f"bytes {len(come)}-{len(come) + len(answer.content) - 1}/{total}"
        if answer.status_code != 206 or answer.headers["Content-Range"] != told or not answer.content:
            break
        come += answer.content
    check("by ranges it comes back as it was", come == photo)
    check("its media type too", answer.headers["Content-Type"] == "image/png")
    tail = ask("GET", Range="bytes=-100")
    check("a range from its end is told", tail.status_code == 206 and tail.content == photo[-100:])
    check("a range past its end is refused", ask("GET", Range=f"bytes={total}-").status_code == 416)
    wrong = f"/v1/photo/{hashlib.sha256(b'another').hexdigest()}"
    answer = ask("PUT", wrong, photo, Content_Type="image/png")
    check("bytes that don't fit their name are refused", answer.status_code == 422, answer.text)
    check("and are not kept", ask("HEAD", wrong).status_code == 404)
    answer = ask("PUT", path, b"<svg/>", Content_Type="image/svg+xml")
    check("what a browser would run is refused", kind_of(answer) == (415, "media"), answer.text)


def refusing(server: Server, pilot: Author) -> None:
    signed = Signed(pilot.courier)
    line = json_lines([pilot.lines[0]])

    def sent(change=None, **given) -> tuple:
        request = signed.sign(server.prepared("POST", "/v1/records", line), **given)
        if change:
            change(request)
        answer = server.send(request)
        return (200, "") if answer.ok else kind_of(answer)

    def altered(request) -> None:
        request.body = request.body.replace(b"member", b"membar")

    def elsewhere(request) -> None:
        request.url += "?from=0"

    def renamed(request) -> None:
        for name in ("Signature-Input", "Signature"):
            request.headers[name] += ", " + request.headers[name].replace("pyhms", "other")

    def unsigned(request) -> None:
        del request.headers["Signature"], request.headers["Signature-Input"]

    thief = Signed(Author("A thief").courier)
    thief.signer.key_resolver.private_keys[signed.keyid] = thief.signer.key_resolver.private_keys[thief.keyid]
    wanted = {
        "as it should be": (sent(), (200, "")),
        "unsigned": (sent(unsigned), (401, "unsigned")),
        "with another body": (sent(altered), (401, "altered")),
        "with another query": (sent(elsewhere), (401, "forged")),
        "with two signatures": (sent(renamed), (401, "signature")),
        "late": (sent(late=310), (401, "clock")),
        "early": (sent(late=-310), (401, "clock")),
        "almost late": (sent(late=280), (200, "")),
        "for another protocol": (sent(tag="other"), (401, "signature")),
        "without its body's digest": (sent(body=None), (401, "signature")),
        "without its query": (sent(covered_component_ids=COVERED[:3]), (401, "signature")),
        "with a short nonce": (sent(nonce="1234567"), (401, "signature")),
        "with an end of its own": (sent(expires=datetime.now() + timedelta(hours=1)), (401, "signature")),
    }
    for how, (told, want) in wanted.items():
        check(f"a request {how}: {want[0]} {want[1]}".rstrip(), told == want, str(told))
    stolen = thief.sign(server.prepared("GET", "/v1/log?from=0"), key_id=signed.keyid)
    check("a request by another's hand is forged", kind_of(server.send(stolen)) == (401, "forged"))
    once = signed.sign(server.prepared("GET", "/v1/log?from=0"))
    first, second = server.send(once), server.send(once)
    check("a request that comes again is refused", first.ok and kind_of(second) == (401, "replayed"))


def ending(root, server: Server, pilot: Author) -> None:
    lost = Author("Outside, lost")
    lost.joins(server.ask("GET", "/v1/school").json()["school"])
    server.ask("POST", "/v1/waiting", json_lines(lost.lines))
    root.admit("Outside, lost", "mechanic")
    server.ask("POST", "/v1/waiting", json_lines(lost.lines))
    first = lost.describes("01980000-0000-7000-8000-00000000fade", "before it was lost")
    answer = server.ask("POST", "/v1/records", json_lines([first]), lost.courier)
    check("a member's device is heard", answer.ok and len(answer.json()["taken"]) == 1, answer.text)
    root.revoke("Outside, lost")
    answer = server.ask("GET", "/v1/log?from=0", key=lost.courier)
    check("a lost device is heard no more", answer.status_code in (401, 403), answer.text)
    answer = server.ask("GET", "/v1/log?from=0", key=lost.key)
    check("nor is its own key", answer.status_code in (401, 403), answer.text)
    after = lost.describes("01980000-0000-7000-8000-00000000fade", "after it was lost")
    told = server.ask("POST", "/v1/records", json_lines([first, after]), pilot.courier).json()
    kept = [one["digest"] for one in told["taken"]] == [digest_of(first)]
    refused = [(one["line"], one["kind"]) for one in told["refused"]]
    check("what it signed since is refused, what before stays", kept and refused == [(2, "revoked")], str(told))


if __name__ == "__main__":
    main(sys.argv[1])
