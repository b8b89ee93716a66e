"""Lives, people and points of a fleet, reckoned once more from its records: by loops of our own here, by
lifelines and by SciPy.

    fleet.py WITNESSMARK

The fleet is the demonstration's school with its season.
"""

import json
import math
import pathlib
import subprocess
import sys
import tempfile
import warnings
from collections import defaultdict

import numpy as np
from lifelines import WeibullFitter
from scipy import stats

from tally import check, done

warnings.filterwarnings("ignore")
WORSE = ["not-fitted", "serviceable", "watch", "unserviceable"]


def run(program: str, data: pathlib.Path, *args: str):
    told = subprocess.run(
        [program, "--data", str(data), *args, "--json"], capture_output=True, text=True, check=False
    )
    if told.returncode != 0:
        raise AssertionError(f"{args}: {told.stderr.strip()[:300]}")
    return json.loads(told.stdout)


def inspections(bundle: pathlib.Path) -> list:
    """Payloads of all inspections, oldest first."""
    lines = [json.loads(json.loads(line)["payload"]) for line in bundle.read_text().splitlines()]
    found = [line for line in lines if line["kind"] == "inspection"]
    return sorted(found, key=lambda line: line["at"])


def lives(looks: list, component: str) -> list:
    """(after, by) by what the manual of the computation says; no component of this fleet has moved."""
    machines = defaultdict(list)
    for look in looks:
        body = look["body"]
        found = {
            f["point"]: f["means"]
            for f in body["findings"]
            if f["component"] == component and not f.get("passing", False) and f["means"] != "not-fitted"
        }
        if found:
            machines[look["machine"]].append((body["hours"], found))
    all_lives = []
    for seen in machines.values():
        began, good, whole, broken = 0.0, {}, None, None
        for hours, found in seen:
            age = round(hours - began, 3)
            wrong = {point for point, means in found.items() if means == "unserviceable"}
            if broken:
                broken["open"] = (broken["open"] - set(found)) | wrong
                if broken["open"]:
                    continue
                all_lives.append((broken["after"], broken["by"]))
                began, good, whole, broken = hours, {point: [0.0] for point in found}, 0.0, None
            elif wrong:
                last = [max([at for at in good.get(point, []) if at < age], default=0.0) for point in wrong]
                broken = {"after": min(last), "by": age, "open": wrong}
            else:
                whole = age
                for point in found:
                    good.setdefault(point, []).append(age)
        if broken:
            all_lives.append((broken["after"], broken["by"]))
        elif whole:
            all_lives.append((whole, None))
    return sorted(all_lives, key=lambda one: (one[1] is None, one[1] or one[0], one[0]))


def points(looks: list) -> dict:
    """Looks and what they newly found, by point."""
    before, counted = {}, defaultdict(lambda: [0, 0, 0])
    for look in looks:
        for finding in look["body"]["findings"]:
            point, means = finding["point"], WORSE.index(finding["means"])
            if means == 0:
                continue
            known = before.get((look["machine"], point), 1)
            counted[point][0] += 1
            if means > max(known, 1):
                counted[point][means - 1] += 1
            before[look["machine"], point] = means
    return counted


def main(program: str) -> None:
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        data, pin, bundle = folder / "data", folder / "pin", folder / "all.jsonl"
        pin.write_text("271828\n")
        run(program, data, "demo", "--school", "--signatory", "Invented visitor", "--pin-file", str(pin))
        run(program, data, "export", "--all", str(bundle))
        looks = inspections(bundle)
        wrong, fits, all_parts = [], [], run(program, data, "fleet", "parts")
        for part in all_parts:
            view = run(program, data, "fleet", "life", part["id"], "--chance", "0.1")
            ours = [(one["after"], one["by"]) for one in view["findings"]]
            theirs = lives(looks, part["id"])
            same = len(ours) == len(theirs) and np.allclose(
                [[a, math.inf if b is None else b] for a, b in ours],
                [[a, math.inf if b is None else b] for a, b in theirs],
                atol=2e-3,
            )
            if not same:
                wrong.append(f"{part['id']}: {ours} for {theirs}")
            if not view["fitted"]:
                continue
            left = np.array([max(a, 1e-9) for a, _ in theirs])
            right = np.array([math.inf if b is None else b for _, b in theirs])
            fitter = WeibullFitter().fit_interval_censoring(left, right)
            for at in view["fitted"][1:]:
                share = math.exp(-((at["hours"] / fitter.lambda_) ** fitter.rho_))
                if abs(share - at["share"]) > 2e-3:
                    fits.append(f"{part['id']} at {at['hours']}: {at['share']} for {share}")
        check(f"fleet: the lives of {len(all_parts)} parts are those of the records", not wrong, str(wrong[:2]))
        check("fleet: a fitted curve is lifelines' of the same lives", not fits, str(fits[:2]))

        worth, counted, wrong, ends = run(program, data, "fleet", "lists")["points"], points(looks), [], []
        for row in worth:
            told = [row["looks"], row["watch"], row["unserviceable"]]
            if told != counted[row["point"]]:
                wrong.append(f"{row['point']}: {told} for {counted[row['point']]}")
            found, n = row["watch"] + row["unserviceable"], row["looks"]
            wilson = stats.binomtest(found, n).proportion_ci(0.95, "wilson")
            if abs(row["low"] - 100 * wilson.low) > 0.051 or abs(row["high"] - 100 * wilson.high) > 0.051:
                ends.append(f"{row['point']}: {row['low']} to {row['high']} for {wilson}")
            # None in n looks, 95 %, one-sided: Clopper and Pearson's exact end is never above the rule of three.
            exact = stats.binomtest(0, n, alternative="less").proportion_ci(0.95, "exact").high
            if row["sort"] == "never" and (exact > 3 / n or f"at most {round(300 / n, 1):g} in 100" not in row["words"]):
                ends.append(f"{row['point']}: {row['words']} for {exact}")
        check(f"fleet: what {len(worth)} points found is what the records say", not wrong, str(wrong[:2]))
        check("fleet: its intervals are SciPy's Wilson, and the rule of three is no less careful than exact", not ends, str(ends[:2]))

        people = run(program, data, "fleet", "looking")["people"]
        signed = defaultdict(int)
        for look in looks:
            signed[look["device"]] += 1
        told = sorted(person["inspections"] for person in people)
        check("fleet: everybody's inspections are counted", told == sorted(signed.values()), f"{told} for {signed}")
    done()


if __name__ == "__main__":
    main(sys.argv[1])
