"""Engine logs in the dialects of several countries, all invented: what our program takes of each, against
what pandas reads and reckons of the same file.

    logs.py WITNESSMARK   draws new logs, has them taken in, and reads the signed figures
    logs.py --write       writes the samples in tests/vectors/logs, with pandas' figures
    logs.py --check       fails when the samples are not what this writes

Where a sensor's lead comes off is known here, since it was planted; our program has to find it.
"""

import dataclasses
import io
import json
import os
import pathlib
import subprocess
import sys
import tempfile
from collections.abc import Callable

import numpy as np
import pandas as pd

from tally import check, done

SAMPLES = pathlib.Path(__file__).resolve().parents[1] / "vectors" / "logs"
SEED = 20260502
ROUNDS = 2
PIN = "271828"
# Our choices, as the program's own documentation states them.
RUNS, STRETCH, APART, STEADY, FASTEST, ALIKE, GAP, HAIR = 500, 10, 5, 1.25, 3500, 1.1, 120, 1e-3


def engine(chance: np.random.Generator, step: float, full: int) -> pd.DataFrame:
    """A flight: stopped, idling, climbing, cruising, idling, stopped. °C and turns a minute."""
    phases = [(0, 10), (2050, int(chance.integers(30, 50))), (full, int(chance.integers(30, 60)))]
    phases += [(6200, int(chance.integers(40, 70))), (2100, int(chance.integers(20, 30))), (0, 10)]
    speed = np.concatenate([np.full(round(seconds / step), level, float) for level, seconds in phases])
    n = len(speed)
    air = float(chance.integers(2, 28))
    levels = [chance.uniform(150, 240), chance.uniform(150, 240)]

    def lag(target: np.ndarray, time: float) -> np.ndarray:
        value, out = air, []
        for wanted in target:
            value += (wanted - value) * (1 - np.exp(-step / time))
            out.append(value)
        return np.array(out) + chance.normal(0, 0.2, n)

    share = np.clip(speed / full, 0, 1)
    running = speed > 0
    return pd.DataFrame(
        {
            "t": np.arange(n) * step,
            "cht1": lag(air + (levels[0] - air) * share, 20),
            "cht2": lag(air + (levels[1] - air) * share, 20),
            "egt": lag(np.where(running, 420 + 230 * share, air), 2),
            "rpm": np.where(running, (speed + chance.normal(0, 35, n)).round(-1), 0),
            "oat": air + chance.normal(0, 0.3, n),
        }
    )


def fahrenheit(celsius: pd.Series) -> pd.Series:
    return celsius * 9 / 5 + 32


def clock(seconds: float) -> str:
    seconds = round(seconds) % 86400
    return f"{seconds // 3600:02}:{seconds // 60 % 60:02}:{seconds % 60:02}"


def since(seconds: pd.Series) -> pd.Series:
    """Seconds of clock times, which may pass midnight."""
    counted = pd.to_timedelta(seconds).dt.total_seconds()
    return counted + 86400 * (counted.diff() < -43200).cumsum()


@dataclasses.dataclass
class Dialect:
    """How a file is written, and how pandas is told to read it."""

    columns: dict[str, tuple[str, str, int]]  # ours: heading, unit, decimals
    time: str
    write_time: Callable[[float], str]
    read_time: Callable[[pd.Series], pd.Series]
    step: float = 1.0
    sep: str = ","
    decimal: str = "."
    before: str = ""
    units: str = ""
    line: str = "\n"
    on: str | None = None
    plant: Callable[[pd.DataFrame], pd.DataFrame] = lambda frame: frame
    runs: int = 1
    gaps: bool = False
    encoding: str = "utf-8"
    planted: dict[str, int] = dataclasses.field(default_factory=dict)
    unread: int = 0
    full: int = 8800


C, F, RPM = "Cel", "degF", "1/min"
DAY = pd.Timestamp("2026-05-02T18:30:00")


def lead_off(frame: pd.DataFrame) -> pd.DataFrame:
    """One sample at the end of a converter's scale, one in range but out of reach, a gauge at its stop."""
    frame = frame.copy()
    middle = len(frame) // 2
    frame.loc[middle, "cht1"] = 1023.75
    frame.loc[middle + 12, "cht1"] = 399.0
    frame.loc[len(frame) - 6 :, "cht2"] = 420.0
    frame.loc[middle - 20, "egt"] = -999.0
    return frame


def twice(frame: pd.DataFrame) -> pd.DataFrame:
    """The clock begins anew: a second run, as hot, one turn slower."""
    return pd.concat([frame, frame.assign(rpm=np.maximum(frame["rpm"] - 10, 0))], ignore_index=True)


DIALECTS = {
    "german-spreadsheet": Dialect(
        {
            "cht1": ("Zylinderkopftemperatur [°C]", C, 1),
            "egt": ("Abgastemperatur [°C]", C, 0),
            "rpm": ("Drehzahl [1/min]", RPM, 0),
            "oat": ("Außentemperatur [°C]", C, 1),
        },
        "Uhrzeit",
        lambda t: clock(t + 52_341),
        since,
        sep=";",
        decimal=",",
        line="\r\n",
        before="\ufeffMotorlog;erfunden\r\nDatum;02.05.2026\r\n\r\n",
        on="2026-05-02",
    ),
    "american": Dialect(
        {
            "cht1": ("CHT1 (F)", F, 1),
            "cht2": ("CHT2 (F)", F, 1),
            "egt": ("EGT (F)", F, 0),
            "rpm": ("RPM", RPM, 0),
            "oat": ("OAT (F)", F, 0),
        },
        "Time (s)",
        lambda t: f"{t:.1f}",
        lambda told: told.astype(float),
        step=0.5,
    ),
    "milliseconds": Dialect(
        {"cht1": ("cht", C, 2), "egt": ("egt", C, 2), "rpm": ("rpm", RPM, 0)},
        "millis",
        lambda t: str(round(t * 1000) + 1204),
        lambda told: told.astype(float) / 1000,
        step=0.5,
        sep="\t",
        before="# an invented logger\n# two samples a second\n",
    ),
    "over-midnight": Dialect(
        {"cht1": ("CHT", C, 0), "rpm": ("Engine", RPM, 0)},
        "Time",
        lambda t: clock(t + 86_290),
        since,
        units="hh:mm:ss,degC,rpm\n",
    ),
    "moments": Dialect(
        {"cht1": ("Head 1, °C", C, 1), "cht2": ("Head 2, °C", C, 1), "rpm": ("Engine speed", RPM, 0)},
        "timestamp",
        lambda t: (DAY + pd.Timedelta(seconds=t)).isoformat(timespec="milliseconds") + "+02:00",
        lambda told: pd.to_datetime(told, utc=True).astype("int64") / 1e9,
        # Tenths of a second, which no binary fraction holds.
        step=0.4,
        on="2026-05-02",
    ),
    "french-with-gaps": Dialect(
        {
            "cht1": ("Température culasse (°C)", C, 1),
            "egt": ("Température échappement (°C)", C, 0),
            "rpm": ("Régime (tr/min)", RPM, 0),
        },
        "Temps (s)",
        lambda t: str(round(t)),
        lambda told: told.astype(float),
        sep=";",
        decimal=",",
        gaps=True,
        encoding="windows-1252",
    ),
    "spanish": Dialect(
        {"cht1": ("Temp. culata (°C)", C, 1), "rpm": ("Revoluciones (rpm)", RPM, 0)},
        "Fecha y hora",
        # Nobody can tell from the file whether this is the 2nd of May or the 5th of February.
        lambda t: (DAY + pd.Timedelta(seconds=t)).strftime("%d/%m/%Y %H:%M:%S"),
        lambda told: pd.to_datetime(told, dayfirst=True).astype("int64") / 1e9,
        sep=";",
        decimal=",",
    ),
    "lead-off": Dialect(
        {"cht1": ("CHT1 °C", C, 2), "cht2": ("CHT2 °C", C, 2), "egt": ("EGT °C", C, 2), "rpm": ("rpm", RPM, 0)},
        "t [s]",
        lambda t: f"{t:.0f}",
        lambda told: told.astype(float),
        plant=lead_off,
        planted={"peak-cht": 8, "peak-egt": 1},
    ),
    "begun-anew": Dialect(
        {"cht1": ("CHT °C", C, 1), "rpm": ("RPM", RPM, 0)},
        "Time (s)",
        lambda t: f"{t:.0f}",
        lambda told: told.astype(float),
        plant=twice,
        runs=2,
    ),
}
# Which columns a figure is the highest of.
CHANNELS = {"peak-cht": ("cht1", "cht2"), "peak-egt": ("egt",), "peak-speed": ("rpm",)}


def written(dialect: Dialect, chance: np.random.Generator) -> str:
    frame = dialect.plant(engine(chance, dialect.step, dialect.full))
    rows, before = [], None
    headings = dialect.sep.join(
        f'"{name}"' if dialect.sep in name else name for name in [dialect.time, *(h for h, _, _ in dialect.columns.values())]
    )
    for _, row in frame.iterrows():
        if before is not None and row["t"] < before:
            rows.append(headings)
        before = row["t"]
        cells = [dialect.write_time(row["t"])]
        for name, (_, unit, decimals) in dialect.columns.items():
            value = fahrenheit(row[name]) if unit == F else row[name]
            cells.append(f"{value:.{decimals}f}".replace(".", dialect.decimal))
        if dialect.gaps and len(rows) % 7 == 3:
            cells[1] = ["", "---"][len(rows) % 2]
        rows.append(dialect.sep.join(cells))
    body = dialect.line.join([headings, *([dialect.units.rstrip("\n")] if dialect.units else []), *rows])
    return dialect.before + body + dialect.line


def read(dialect: Dialect, text: str) -> pd.DataFrame:
    """By pandas, which is told what our program has to find out."""
    text = text.removeprefix("\ufeff").replace("\r\n", "\n")
    lines = text.split("\n")
    top = next(n for n, line in enumerate(lines) if line.startswith((dialect.time, f'"{dialect.time}"')))
    heading = lines[top]
    kept = [heading] + [line for line in lines[top + 1 + bool(dialect.units) :] if line != heading]
    frame = pd.read_csv(
        io.StringIO("\n".join(kept)), sep=dialect.sep, decimal=dialect.decimal, na_values=["---"]
    )
    frame = frame.rename(columns={heading: ours for ours, (heading, _, _) in dialect.columns.items()})
    frame["t"] = dialect.read_time(frame.pop(dialect.time))
    frame["run"] = (frame["t"].diff() < 0).cumsum()
    return frame


def idle(frame: pd.DataFrame) -> float | None:
    """The median of all samples in steady stretches about as slow as the slowest."""
    stretches = []
    for _, run in frame.dropna(subset="rpm").groupby("run"):
        times, speeds = run["t"].to_numpy(), run["rpm"].to_numpy()
        for first, at in enumerate(times):
            full = np.searchsorted(times, at + STRETCH - HAIR)
            if full >= len(times):
                break
            last = np.searchsorted(times, times[full], side="right")
            window = speeds[first:last]
            whole = (np.diff(times[first:last]) <= APART + HAIR).all() and (window > RUNS).all()
            if whole and window.max() <= STEADY * window.min() and window.mean() <= FASTEST:
                stretches.append((window.mean(), run.index[first:last]))
    if not stretches:
        return None
    lowest = min(mean for mean, _ in stretches)
    taken = set().union(*(set(index) for mean, index in stretches if mean <= lowest * ALIKE))
    return float(frame.loc[sorted(taken), "rpm"].median())


def hours(frame: pd.DataFrame) -> float:
    """Each time between two samples counts by how many of both run."""
    total = 0.0
    for _, run in frame.dropna(subset="rpm").groupby("run"):
        between, above = run["t"].diff(), (run["rpm"] > RUNS).astype(float)
        total += (between * (above + above.shift()) / 2)[between <= GAP + HAIR].sum()
    return total / 3600


def figures(dialect: Dialect, text: str) -> dict:
    frame = read(dialect, text)
    true = frame.copy()
    if dialect.planted:
        # What was planted is known: no head of these is hotter than 300 °C, nor is any sensor colder than air.
        for name in ("cht1", "cht2", "egt"):
            true.loc[(true[name] > (300 if name != "egt" else 1200)) | (true[name] < -60), name] = np.nan
    told: dict = {}
    for measure, names in CHANNELS.items():
        there = [name for name in names if name in dialect.columns]
        if there:
            told[measure] = {"value": float(true[there].max().max()), "unit": dialect.columns[there[0]][1]}
    level = idle(true)
    if level is not None:
        told["idle-speed"] = {"value": level, "unit": RPM}
    told["run-time"] = {"value": hours(true), "unit": "h"}
    outside = None
    if "oat" in dialect.columns:
        outside = {"value": float(frame["oat"].median()), "unit": dialect.columns["oat"][1]}
    return {
        "figures": told,
        "left_out": dialect.planted,
        "outside": outside,
        "rows": len(frame),
        "unread": dialect.unread,
        "on": dialect.on,
        "runs": dialect.runs,
    }


# How far a figure may lie from pandas': half of the last digit that it is rounded to.
HALF = {"idle-speed": 0.5, "run-time": 0.0005}


def ours(program: str, folder: str, file: str, name: str) -> dict:
    """Has a log taken in by a machine of its own, and reads the record out of the exported bundle."""

    def run(*args: str) -> str:
        done = subprocess.run([program, "--data", folder, *args], capture_output=True, text=True, check=False)
        if done.returncode:
            raise AssertionError(f"{args[:2]}: {done.stderr.strip()[:300]}")
        return done.stdout

    pin = os.path.join(folder, "pin")
    pathlib.Path(pin).write_text(PIN + "\n")
    sign = ("--pin-file", pin)
    run("machine", "add", "--name", name, "--engine", "bramble-125", "--without-reserve", "--signatory", "A. Tester", *sign)
    run("import", "readings", file, "--machine", name, "--yes", *sign)
    bundle = os.path.join(folder, "bundle.jsonl")
    run("export", name, bundle)
    for line in pathlib.Path(bundle).read_text().splitlines():
        payload = json.loads(json.loads(line)["payload"])
        if payload["kind"] == "readings-taken":
            return payload["body"]
    raise AssertionError("no record of the log")


def near(found: dict, wanted: dict, half: float) -> bool:
    return found["unit"] == wanted["unit"] and abs(found["value"] - wanted["value"]) <= half + 1e-9


def differs(body: dict, wanted: dict) -> list[str]:
    found = {reading["measure"]: reading for reading in body["readings"]}
    wrong = [] if set(found) == set(wanted["figures"]) else [f"measures {sorted(found)}"]
    for measure, figure in wanted["figures"].items():
        reading = found.get(measure)
        if reading and not near(reading["value"], figure, HALF.get(measure, 0)):
            wrong.append(f"{measure}: {reading['value']} for {figure}")
        if reading and measure in CHANNELS and reading["left_out"] != wanted["left_out"].get(measure, 0):
            wrong.append(f"{measure}: {reading['left_out']} left out")
    if wanted["outside"] and not near(body.get("outside", {"unit": "", "value": 0}), wanted["outside"], 0.5):
        wrong.append(f"outside: {body.get('outside')} for {wanted['outside']}")
    for name in ("rows", "unread"):
        wrong += [] if body[name] == wanted[name] else [f"{name}: {body[name]} for {wanted[name]}"]
    if wanted["on"] and body["on"] != wanted["on"]:
        wrong.append(f"on: {body['on']}")
    return wrong


def live(program: str, seed: int) -> None:
    chance = np.random.default_rng(seed)
    for name, dialect in DIALECTS.items():
        wrong = []
        for _ in range(ROUNDS):
            text = written(dialect, chance)
            with tempfile.TemporaryDirectory() as folder:
                file = os.path.join(folder, f"{name}.csv")
                pathlib.Path(file).write_bytes(text.encode(dialect.encoding))
                wrong += differs(ours(program, folder, file, name), figures(dialect, text))
        check(f"a log in the dialect {name} tells what pandas says", not wrong, f"seed {seed}: {'; '.join(wrong[:3])}")


def samples() -> dict[str, str]:
    chance = np.random.default_rng(SEED)
    files = {f"{name}.csv": written(dialect, chance) for name, dialect in DIALECTS.items()}
    told = {f"{name}.csv": figures(dialect, files[f"{name}.csv"]) for name, dialect in DIALECTS.items()}
    return {**files, "figures.json": json.dumps(told, indent=1, ensure_ascii=False) + "\n"}


if __name__ == "__main__":
    match sys.argv[1]:
        case "--write":
            SAMPLES.mkdir(exist_ok=True)
            for name, text in samples().items():
                (SAMPLES / name).write_bytes(text.encode())
        case "--check":
            stale = [name for name, text in samples().items() if (SAMPLES / name).read_bytes() != text.encode()]
            sys.exit(f"not what pandas says: {stale}" if stale else 0)
        case program:
            live(program, int.from_bytes(os.urandom(4), "big"))
            done()
