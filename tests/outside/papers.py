"""Papers in the hands of other programs: the record sheet's text by poppler's pdftotext, its codes
by zbar's zbarimg, the table by Python's csv, the calendar by PyPI's icalendar.

    papers.py WITNESSMARK
"""

import csv
import datetime
import json
import pathlib
import re
import subprocess
import sys
import tempfile

from icalendar import Calendar

from desk import Desk
from tally import check, done

TODAY = datetime.date.today()
MM = 72 / 25.4
# A note that a spreadsheet would run, with all that a comma-separated table must quote.
FORMULA = '=HYPERLINK("x"),\nsaid "so"'


def ago(days: int) -> str:
    return str(TODAY - datetime.timedelta(days=days))


def told(*command) -> str:
    return subprocess.run([str(part) for part in command], capture_output=True, text=True, check=True).stdout


def flat(text: str) -> str:
    """Line ends and runs of spaces as one space: a wrapped line is the same words."""
    return re.sub(r"\s+", " ", text)


def words(pdf: pathlib.Path, page: int = 0) -> str:
    pages = ("-f", page, "-l", page) if page else ()
    return flat(told("pdftotext", "-raw", "-enc", "UTF-8", *pages, pdf, "-"))


def about(pdf: pathlib.Path) -> dict:
    lines = (line.split(":", 1) for line in told("pdfinfo", pdf).splitlines() if ":" in line)
    return {name: value.strip() for name, value in lines}


def size(pdf: pathlib.Path) -> tuple:
    width, height = re.match(r"([\d.]+) x ([\d.]+) pts", about(pdf)["Page size"]).groups()
    return float(width), float(height)


def near(a: tuple, b: tuple) -> bool:
    return all(abs(x - y) < 0.1 for x, y in zip(a, b))


def code(picture: pathlib.Path) -> str:
    return told("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture).strip()


def printed(pdf: pathlib.Path, *how: str) -> pathlib.Path:
    """The first page as a printer would put it on paper."""
    told("pdftoppm", *how, "-singlefile", "-f", 1, "-l", 1, pdf, pdf.with_suffix(""))
    return next(file for end in (".pbm", ".pgm", ".ppm") if (file := pdf.with_suffix(end)).exists())


def lacking(text: str, wanted: list) -> list:
    return [item for item in wanted if flat(str(item)) not in text]


def holds(name: str, text: str, wanted: list) -> None:
    assert wanted, name
    lacks = lacking(text, wanted)
    check(name, not lacks, f"not there: {lacks[:5]}")


def check_pdf(name: str, pdf: pathlib.Path) -> None:
    """Real text in fonts that are inside the file, as subsets, with their letters known."""
    fonts = told("pdffonts", pdf).splitlines()[2:]
    columns = [re.search(r"(yes|no) +(yes|no) +(yes|no) +\d+ +\d+$", font.strip()) for font in fonts]
    whole = all(column and column.groups() == ("yes",) * 3 for column in columns)
    check(f"{name}: fonts are embedded subsets that know their letters", bool(fonts) and whole, str(fonts))
    check(f"{name}: is tagged", about(pdf).get("Tagged") == "yes")


def payloads(desk: Desk, machine: str) -> list:
    """The records themselves, with their digests from our own list: what every paper must agree with."""
    bundle = desk.file("export", machine, "own.jsonl")
    return [json.loads(json.loads(line)["payload"]) for line in bundle.read_text().splitlines()]


def of_kind(records: list, kind: str) -> list:
    return [record for record in records if record["kind"] == kind]


def digest_of(desk: Desk, machine: str, kind: str, nth: int = 0) -> str:
    timeline = desk.run("show", machine)["timeline"]
    return [entry["record"] for entry in timeline if entry["kind"] == kind][nth]


def band_ends(finding: dict) -> list:
    band = finding.get("band", {})
    return [band[end]["value"] for end in ("low", "high") if band.get(end, {}).get("value") is not None]


def check_sheets(desk: Desk) -> None:
    digest = digest_of(desk, "Own", "inspection")
    body = of_kind(payloads(desk, "Own"), "inspection")[-1]["body"]
    device = desk.run("record", digest)["device"]
    sheets = {paper: desk.file("print", digest, f"{paper}.pdf", "--paper", paper) for paper in ("a4", "letter")}
    # ISO 216: A4 is 210 by 297 mm. US Letter is 8.5 by 11 in.
    check("A4 is 210 by 297 mm", near(size(sheets["a4"]), (210 * MM, 297 * MM)))
    check("Letter is 8.5 by 11 in", near(size(sheets["letter"]), (612, 792)))
    for paper, pdf in sheets.items():
        check_pdf(f"inspection on {paper}", pdf)
        text = words(pdf)
        # 14 CFR 43.11 (a): type and extent; date and time in service; who; the statement; and for what
        # isn't found fit, the dated list. AC 43.9-1 items 1 to 3: machine, serial numbers, owner.
        holds(f"{paper}: machine, engine, serial numbers, owner", text, ["Own “blue”", "Bramble 125", "Propeller P-77", "Registered by A. Tester"])
        extent = f"{len(body['findings'])} of {len(body['findings']) + len(body['left'])} points looked at"
        holds(f"{paper}: type and extent", text, ["Type and extent List “Before flight”", extent])
        holds(f"{paper}: date and time in service", text, ["Date of the inspection", f"{TODAY.day} {TODAY:%B} {TODAY.year}", "Time in service 41.6 engine hours, 53 flights"])
        holds(f"{paper}: who signed, with the device key", text, ["Signed by A. Tester", device])
        holds(f"{paper}: the statement, and that it is no certificate", text, ["saw what is written here", "It is not a legal certificate"])
        holds(f"{paper}: the record's digest in full", text, [digest])
        holds(f"{paper}: lines to be filled by hand", text, ["Certificate or licence: kind and number", "Name and date", "Signature"])
        findings = [f"{finding['title']} {finding['words']}" for finding in body["findings"]]
        holds(f"{paper}: every finding beside what was seen", text, findings)
        limits = [finding["band"]["name"] for finding in body["findings"] if band_ends(finding)]
        ends = [f"{end:g}" for finding in body["findings"] for end in band_ends(finding)]
        holds(f"{paper}: every limit a value was held against", text, ends)
        check(f"{paper}: as many limits as measured points", text.count("Limit ") >= len(limits) > 0)
        wanting = [f for f in body["findings"] if f["means"] in ("watch", "unserviceable")]
        marks = {"watch": "to be watched", "unserviceable": "unserviceable"}
        # Once in the list of what is wanting, once among all, once in what is open.
        said = [f"{f['words']} ({marks[f['means']]})" for f in wanting]
        check(f"{paper}: what is wanting is told three times", len(said) == 2 and all(text.count(flat(one)) == 3 for one in said))
        holds(f"{paper}: the note beside a finding", text, ["Note: Net torn at the lower left; “see” <photo> & bill"])
        left = [f"{left['title']} Left out, although the list demands it" for left in body["left"]]
        holds(f"{paper}: points left", text, left)
        count = int(about(pdf)["Pages"])
        pages = [words(pdf, page + 1) for page in range(count)]
        numbered = all(f"{n + 1} / {count}" in page and f"record {digest[:8]}" in page for n, page in enumerate(pages))
        check(f"{paper}: every page has its number and the record's short digest", count > 1 and numbered)
        for way, how in {"grey": ("-gray", "-r", "150"), "black and white": ("-mono", "-r", "300")}.items():
            read = code(printed(pdf, *how))
            check(f"{paper}: zbarimg reads the digest printed {way}", read == f"WM1RECORD:{digest.upper()}", read)


def check_label(desk: Desk) -> None:
    machine = desk.run("show", "Own")["card"]["id"]
    pdf = desk.file("label", "Own", "label.pdf")
    check_pdf("label", pdf)
    check("the label is one page of 60 by 40 mm", near(size(pdf), (60 * MM, 40 * MM)) and about(pdf)["Pages"] == "1")
    holds("the label has the machine's name and what to do", words(pdf), ["Own “blue”", "Scan in the app"])
    read = code(printed(pdf, "-mono", "-r", "300"))
    check("zbarimg reads the machine's id on the label", read == f"WM1MACHINE:{machine.upper()}", read)


def version(svg: str) -> float:
    """The code's version from its measures: ISO/IEC 18004 has 17 + 4 modules a version, and four
    light modules on each side; a finder pattern's first row is seven dark modules."""
    width = float(re.search(r'viewBox="0 0 ([\d.]+)', svg)[1])
    first = re.search(r"M([\d.]+) ([\d.]+)", svg)
    return ((width / (float(first[1]) / 4) - 8) - 17) / 4


def check_codes(desk: Desk, name: str, shown: dict) -> None:
    svg = pathlib.Path(desk.write("code.svg", shown["svg"]))
    picture = svg.with_suffix(".png")
    told("rsvg-convert", "--width", 800, "--background-color", "white", "--output", picture, svg)
    check(f"zbarimg reads the {name}", code(picture) == shown["text"])
    check(f"the {name} fits version 15", 1 <= version(shown["svg"]) <= 15, str(version(shown["svg"])))


def check_work(desk: Desk, other: Desk) -> None:
    begun = digest_of(desk, "Own", "job-begun")
    before = words(desk.file("print", begun, "before.pdf"))
    holds("a job not released says what it lacks", before, ["Not released.", "Nobody has signed the list after the work yet."])
    desk.walk("Own", "after-service", {})
    ask = desk.run("second-look", "ask", "Own")
    check_codes(desk, "second look's request", ask)
    joints = [("--joint", f"{joint}=good") for joint in of_kind(payloads(desk, "Own"), "job-begun")[-1]["body"]["independent"]]
    reply = other.sign("second-look", "look", ask["text"], *(word for pair in joints for word in pair))
    check_codes(desk, "second look's reply", reply)
    desk.run("second-look", "take", "Own", reply["text"])
    desk.sign("release", "Own")
    records = payloads(desk, "Own")
    listed, release = of_kind(records, "inspection")[-1]["body"], digest_of(desk, "Own", "job-released")
    for asked in (begun, release):
        pdf = desk.file("print", asked, "job.pdf")
        read = code(printed(pdf, "-gray", "-r", "150"))
        check("zbarimg reads the digest that was asked for", read == f"WM1RECORD:{asked.upper()}", read)
    check_pdf("job", pdf)
    text = words(pdf)
    # 14 CFR 43.9 (a): description, date of completion, who did it, signature, certificate.
    holds("job: description", text, ["Description of the work Head nuts torqued", "Note: Seeped at the base."])
    holds("job: date of completion, time in service", text, ["Date of completion", "Time in service 41.6 engine hours, 53 flights"])
    holds("job: every point of its list", text, [f"{f['title']} {f['words']}" for f in listed["findings"]])
    torque = next(finding["torque"] for finding in listed["findings"] if "torque" in finding)
    holds("job: tool, and movement of every nut", text, [f"{torque['tool_name']} set to", ", ".join(map(str, torque["eighths"]))])
    holds("job: second look, by whom", text, ["Second look by another person Ida Instructor", "Head nuts As it should be"])
    holds("job: released, by whom", text, ["Released: the inspections of this work are complete.", "Release Signed by A. Tester"])
    kinds = ("job-begun", "inspection", "second-look", "job-released")
    holds("job: every digest in full", text, [digest_of(desk, "Own", kind) for kind in kinds])


def check_table(desk: Desk) -> None:
    file = desk.file("csv", "Own", "own.csv")
    raw = file.read_bytes()
    check("the table's lines end as RFC 4180 has it", raw.endswith(b"\r\n") and raw.startswith(b"when,kind,who,"))
    with file.open(encoding="utf-8", newline="") as opened:
        rows = list(csv.DictReader(opened, strict=True))
    facts = [(row["when"], row["point"], row["title"], row["words"], row["means"]) for row in rows if row["point"]]
    guard = lambda text: "'" + text if text[:1] in "=+-@" and text else text
    wanted, values = [], []
    for record in of_kind(payloads(desk, "Own"), "inspection"):
        for finding in record["body"]["findings"]:
            when = datetime.datetime.fromisoformat(finding["at"])
            wanted.append((when, finding["point"], guard(finding["title"]), guard(finding["words"]), finding["means"]))
            if "measured" in finding:
                values.append((finding["point"], finding["measured"]["value"], finding["measured"]["unit"]))
    found = [(datetime.datetime.fromisoformat(when), *rest) for when, *rest in facts if when]
    lost = [fact for fact in wanted if fact not in found]
    check("every finding is a row of the table", len(wanted) > 80 and not lost, str(lost[:2]))
    read = [(row["point"], float(row["value"]), row["unit"]) for row in rows if row["value"]]
    close = lambda a, b: a[0] == b[0] and abs(a[1] - b[1]) < 1e-6 and a[2] == b[2]
    check("every value is in it with its unit", values and all(any(close(v, r) for r in read) for v in values))
    signed = {row["record"] for row in rows if row["record"]}
    known = {entry["record"] for entry in desk.run("show", "Own")["timeline"]}
    check("every record of the machine is in it, and no other", signed == known, str(signed ^ known))
    cells = [cell for row in rows for column, cell in row.items() if column not in ("hours", "flights", "value")]
    check("no cell is a formula", not any(cell[:1] in ("=", "+", "-", "@") for cell in cells if cell))
    check("a note that looks like one is there behind an apostrophe", "'" + FORMULA in cells)


def check_calendar(desk: Desk) -> None:
    raw = desk.file("calendar", "Own", "own.ics").read_bytes()
    # RFC 5545, 3.1: lines of 75 octets at most, ended by CRLF.
    lines = raw.split(b"\r\n")
    check("the calendar's lines are folded", max(map(len, lines)) <= 75 and b"\n" not in b"".join(lines))
    calendar = Calendar.from_ical(raw)
    check("the calendar names its maker and version", "Witness Mark" in calendar["PRODID"] and calendar["VERSION"] == "2.0")
    events = {str(event["SUMMARY"]): event for event in calendar.walk("VEVENT")}
    day = lambda start, days: datetime.date.fromisoformat(start) + datetime.timedelta(days=days)
    # Added up by Python from what was typed.
    wanted = {
        "Own “blue”: Belt, and its “tension”; both is due": day(ago(20), 100),
        "Own “blue”: repack the reserve parachute": day(ago(40), 180),
        "Wrench 2: calibration is due": day(ago(30), 365),
        "Own “blue”: last day that this may wait: Netting, every string": day(ago(0), 60),
    }
    for summary, when in wanted.items():
        event = events.get(summary)
        check(f"calendar: {summary}", event is not None and event["DTSTART"].dt == when, str(event and event["DTSTART"].dt))
    check("nothing else is in the calendar", set(events) == set(wanted), str(set(events) - set(wanted)))
    check("what has no day is told", "Lines" in str(calendar["DESCRIPTION"]))
    whole = [event for event in events.values() if type(event["DTSTART"].dt) is datetime.date and "DTEND" not in event]
    check("entries are whole days", len(whole) == len(events))
    alarms = [alarm["TRIGGER"].dt for event in events.values() for alarm in event.walk("VALARM")]
    check("each has an alarm a week before", alarms == [datetime.timedelta(days=-7)] * len(events), str(alarms))
    uids = sorted(str(event["UID"]) for event in events.values())
    again = Calendar.from_ical(desk.file("calendar", "Own", "again.ics").read_bytes())
    check("UIDs are the same next time", uids == sorted(str(e["UID"]) for e in again.walk("VEVENT")) and len(set(uids)) == len(uids))
    stamps = [event["DTSTAMP"].dt for event in events.values()]
    check("entries are stamped in UTC", all(stamp.utcoffset() == datetime.timedelta(0) for stamp in stamps))


def tell(desk: Desk) -> None:
    """The story that all papers are of."""
    machine = ("--engine", "bramble-125", "--hours", "41.6", "--flights", "53", "--serial", "propeller=P-77")
    reserve = ("--reserve-repacked", ago(40), "--repack-every", "180")
    desk.sign("machine", "add", "--name", "Own “blue”", *machine, *reserve)
    limit = ("--low", "125 lbf.in", "--high", "130 lbf.in", "--document", "Invented manual", "--page", "14")
    desk.sign("confirm-limit", "Own", "head-nut-torque", *limit)
    points = desk.run("points", "Own", "--occasion", "before-flight")["points"]
    ask = {point["id"]: point["ask"] for point in points}
    means = lambda point, means: next(a["id"] for a in ask[point]["answers"] if a["means"] == means)
    net = {"answer": means("cage-net", "unserviceable"), "note": "Net torn at the lower left; “see” <photo> & bill"}
    left = next(p["id"] for p in points if p["must"] and p["ask"]["by"] == "words" and p["id"] not in ("cage-net", "cylinder-base"))
    base = {"answer": means("cylinder-base", "watch"), "note": FORMULA}
    found = {"cage-net": net, "cylinder-base": base, left: None}
    desk.walk("Own", "before-flight", found)


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        desk = Desk(sys.argv[1], pathlib.Path(folder) / "own", "A. Tester")
        other = Desk(sys.argv[1], pathlib.Path(folder) / "other", "Ida Instructor")
        tell(desk)
        check_sheets(desk)
        check_label(desk)
        desk.sign("tool", "add", "Wrench 2", "--low", "5 N.m", "--high", "25 N.m", "--calibrated", ago(30), "--every-days", "365")
        desk.sign("due", "keep", "Own", "Belt, and its “tension”; both", "--every-days", "100", "--done-on", ago(20))
        desk.sign("due", "keep", "Own", "Lines", "--every-flights", "50")
        desk.sign("defect", "defer", "Own", "cage-net", "--until-date", ago(-60), "--condition", "Solo only", "--reason", "Ordered")
        check_calendar(desk)
        desk.sign("job", "begin", "Own", "--did", "head-retorqued", "--note", "Seeped at the base.")
        check_work(desk, other)
        check_table(desk)
    done()


main()
