"""Trends, lives and air, against SciPy, pymannkendall, lifelines and ambiance, on random data.

    figures.py WITNESSMARK

Each check draws its data anew; where one fails it tells the seed.
"""

import json
import math
import pathlib
import random
import subprocess
import sys
import tempfile
import warnings

import numpy as np
import pymannkendall
from ambiance import Atmosphere
from lifelines import KaplanMeierFitter, WeibullFitter
from lifelines.fitters.npmle import npmle
from scipy import optimize, stats

from desk import Desk
from tally import check, done

SETS = 25
warnings.filterwarnings("ignore")


def ask(program: str, name: str, request: dict) -> dict:
    run = subprocess.run(
        [program, "compute", name], input=json.dumps(request), capture_output=True, text=True, check=False
    )
    if run.returncode != 0:
        raise AssertionError(f"{name}: {run.stderr.strip()[:300]}")
    return json.loads(run.stdout)


def near(found, wanted: float, share: float = 1e-9, hair: float = 1e-12) -> bool:
    return found is not None and math.isclose(found, wanted, rel_tol=share, abs_tol=hair)


def readings(chance: np.random.Generator, n: int, coarse: bool, shared: bool) -> tuple:
    x = np.sort(chance.uniform(0, 3 * n, n)).round(1)
    if shared:
        x = np.floor(x / 7) * 7
    y = 180 + chance.normal(0, 0.02) * x + chance.standard_t(3, n) * 3
    return x.tolist(), (y.round() if coarse else y).tolist()


def trends(program: str, chance: np.random.Generator, seed: int) -> None:
    wrong = {"theilslopes": [], "kendalltau": [], "pymannkendall": [], "pettitt": [], "large": []}
    for number in range(SETS):
        coarse, shared = bool(number % 2), bool(number % 4 > 1)
        n = int(chance.integers(8, 200)) if number else 3000
        x, y = readings(chance, n, coarse, shared)
        # The order in which readings come says nothing.
        order = chance.permutation(n)
        told = ask(program, "trend", {"x": [x[i] for i in order], "y": [y[i] for i in order]})
        sen = stats.theilslopes(y, x, 0.95)
        same = zip(("slope", "intercept", "slope_low", "slope_high"), sen)
        off = [name for name, value in same if not near(told[name], value, 1e-9, 1e-11)]
        wrong["large" if number == 0 else "theilslopes"] += [f"{number}: {off}"] if off else []
        # τ's asymptotic variance has all terms for ties; its z has no correction for continuity.
        tau = stats.kendalltau(x, y, method="asymptotic")
        uncorrected = 2 * stats.norm.sf(abs(told["s"]) / math.sqrt(told["variance"]))
        if not near(uncorrected, tau.pvalue, 1e-7):
            wrong["kendalltau"].append(f"{number}: {uncorrected} for {tau.pvalue}")
        if not shared and len(set(x)) == n:
            mk = pymannkendall.original_test(y)
            same = (("s", mk.s), ("variance", mk.var_s), ("z", mk.z))
            off = [name for name, value in same if not near(told[name], value)]
            off += [] if near(told["p"], mk.p, 1e-9, 1e-14) else ["p"]
            off += [] if (told["direction"] != "neither") == bool(mk.h) else ["direction"]
            wrong["pymannkendall"] += [f"{number}: {off}"] if off else []
            u = [sum(np.sign(y[j] - y[i]) for i in range(t) for j in range(t, n)) for t in range(1, n)] if n < 60 else []
            if u:
                k = max(map(abs, u))
                p = 2 * math.exp(-6 * k * k / (n**3 + n**2))
                at = x[[abs(v) for v in u].index(k) + 1] if p < 0.05 else None
                if told["change_at"] != at:
                    wrong["pettitt"].append(f"{number}: {told['change_at']} for {at}")
    check(f"trend: SciPy's theilslopes agrees ({SETS - 1} random sets, half of them coarse)", not wrong["theilslopes"], f"seed {seed}: {wrong['theilslopes'][:3]}")
    check("trend: SciPy's theilslopes agrees on 3 000 readings, where we don't make all slopes", not wrong["large"], f"seed {seed}: {wrong['large']}")
    check("trend: S and its variance are those of SciPy's kendalltau, ties in both", not wrong["kendalltau"], f"seed {seed}: {wrong['kendalltau'][:3]}")
    check("trend: pymannkendall's original test agrees, ties and all", not wrong["pymannkendall"], f"seed {seed}: {wrong['pymannkendall'][:3]}")
    check("trend: the change point is Pettitt's by his own double sum", not wrong["pettitt"], f"seed {seed}: {wrong['pettitt'][:3]}")


def differs(told: dict) -> list:
    """Where what is told of a measure isn't what its own points give."""
    x, y = ([point[name] for point in told["points"]] for name in ("hours", "value"))
    line, sen = told["line"], stats.theilslopes(y, x, 0.95)
    same = (("per_100_hours", sen.slope), ("low", sen.low_slope), ("high", sen.high_slope))
    wrong = [name for name, value in same if not near(line[name], value * 100, 1e-9, 1e-9)]
    middle = float(np.median(x)), float(np.median(y))
    for end in ("from", "to"):
        for name, slope in (("", sen.slope), ("low_", sen.low_slope), ("high_", sen.high_slope)):
            value = middle[1] + slope * (line[f"{end}_hours"] - middle[0])
            wrong += [] if near(line[name + end], value, 1e-9, 1e-9) else [name + end]
    if len(set(x)) == len(x):
        mk = pymannkendall.original_test(y)
        wrong += [] if near(told["chance"], mk.p, 1e-9, 1e-14) else ["chance"]
        direction = {"increasing": "rising", "decreasing": "falling", "no trend": "neither"}[mk.trend]
        wrong += [] if told["direction"] == direction else ["direction"]
    if told["reaches"]:
        at = lambda slope: max(middle[0] + (told["band"]["limit"] - middle[1]) / slope, max(x))
        wrong += [] if near(told["reaches"]["at"], at(sen.slope), 1e-9) else ["reaches"]
        soonest = min(at(slope) for slope in (sen.low_slope, sen.high_slope, sen.slope) if slope * sen.slope > 0)
        wrong += [] if near(told["reaches"]["low"], soonest, 1e-9) else ["reaches low"]
    return [f"{told['id']}: {name}" for name in wrong]


def measures(program: str, chance: np.random.Generator, seed: int) -> None:
    """What `trend MACHINE MEASURE` says of logs taken in one by one, and of the demonstration."""
    with tempfile.TemporaryDirectory() as folder:
        desk = Desk(program, pathlib.Path(folder) / "own", "A. Tester")
        desk.sign("machine", "add", "--name", "Own", "--engine", "bramble-125", "--without-reserve")
        hours = np.sort(chance.uniform(1, 60, 14)).round(1)
        for _ in range(3):
            desk.run("flight", "log", "Own", "--hours", "20")
        highest = (190 + 0.2 * hours + chance.normal(0, 2, 14)).round(1)
        outside = chance.integers(2, 30, 14)
        for at, peak, air in zip(hours, highest, outside):
            rows = [f"{second},{peak - abs(second - 40):.1f},8800,{air}" for second in range(60)]
            text = "\n".join(["Time (s),CHT (°C),RPM,OAT (°C)", *rows]) + "\n"
            file = desk.write("log.csv", text)
            desk.sign("import", "readings", file, "--machine", "Own", "--hours", str(at), "--yes")
        told = desk.run("trend", "Own", "peak-cht")
        # A head follows the air degree by degree (common practice, no source).
        drawn = [(point["hours"], point["value"], point["raw"]) for point in told["points"]]
        wanted = [(at, peak + 15 - air, peak) for at, peak, air in zip(hours, highest, outside)]
        off = [(a, b) for a, b in zip(drawn, sorted(wanted)) if not all(map(near, a, b))]
        check("trend MACHINE MEASURE: its points are the logs' on a day of 15 °C", len(drawn) == 14 and not off, f"seed {seed}: {off[:2]}")
        wrong = differs(told)
        check("trend MACHINE MEASURE: SciPy and pymannkendall agree on the points it prints", not wrong, f"seed {seed}: {wrong}")

        demo = Desk(program, pathlib.Path(folder) / "demo", "A. Tester")
        demo.sign("demo", "--school")
        wrong, lines = [], 0
        for machine in demo.run("machine", "list"):
            for told in demo.run("trend", machine["id"]):
                if told["line"] is None:
                    # Too little, or grades: then nothing that looks like a number, either.
                    wrong += [f"{told['id']}: {told['reaches']}"] if told["reaches"] else []
                    continue
                lines += 1
                wrong += [f"{machine['name']}, {name}" for name in differs(told)]
        check("trend: they agree on every measure of the demonstration's school that has a line", lines > 10 and not wrong, f"{lines} lines: {wrong[:3]}")


def found(chance: np.random.Generator, n: int, exact: bool) -> list:
    """Lives of a known Weibull, seen at inspections every so many hours, until each is sold."""
    lives = 80 * chance.weibull(2.2, n)
    sold = chance.uniform(20, 250, n)
    every = chance.uniform(5, 40, n)
    findings = []
    for life, until, step in zip(lives, sold, every):
        if exact and chance.random() < 0.2:
            findings.append([life, life] if life <= until else [until, None])
            continue
        seen = np.append(np.arange(0, until, step), until)
        before, after = seen[seen < life], seen[seen >= life]
        findings.append([round(before[-1], 5), round(after[0], 5) if len(after) else None])
    return [[a, b if b is None or b > a or exact else a + 1e-4] for a, b in findings]


def log_likelihood(findings: list, k: float, scale: float) -> float:
    """By scipy.stats' survival function and density alone."""
    after = np.array([a for a, _ in findings])
    by = np.array([math.inf if b is None else b for _, b in findings])
    exact = after == by
    alive, gone = (stats.weibull_min.logsf(t, k, scale=scale) for t in (after, by))
    density = stats.weibull_min.logpdf(after, k, scale=scale)
    # ln(S(after) − S(by)), where both are nearly nothing, too.
    share = np.where(exact, 1, -np.expm1(np.minimum(gone - alive, 0)))
    between = alive + np.where(share > 0, np.log(np.maximum(share, 1e-300)), -1e9)
    return float(np.sum(np.where(exact, density, between)))


def lives(program: str, chance: np.random.Generator, seed: int) -> None:
    wrong = {"npmle": [], "gap": [], "weibull": [], "summit": [], "profile": [], "km": []}
    for number in range(SETS // 2):
        findings = found(chance, int(chance.integers(15, 120)), exact=False)
        told = ask(program, "life", {"findings": findings})
        if told["too_little"]:
            continue
        left = np.array([after for after, _ in findings])
        right = np.array([np.inf if by is None else by for _, by in findings])
        # The non-parametric estimate: another's masses are never likelier than ours.
        masses = [(m["after"], math.inf if m["by"] is None else m["by"], m["mass"]) for m in told["turnbull"]]
        if not near(sum(m for _, _, m in masses), 1.0, 1e-7):
            wrong["npmle"].append(f"{number}: masses don't add up to 1")
        ours = sum(math.log(sum(m for a, b, m in masses if a >= after and b <= by)) for after, by in zip(left, right))
        if not near(ours, told["turnbull_log_likelihood"], 1e-6):
            wrong["npmle"].append(f"{number}: {told['turnbull_log_likelihood']} told, {ours} by its masses")
        spans, theirs = lifelines_npmle(left, right)
        reached = sum(math.log(sum(m for (a, b), m in zip(spans, theirs) if a >= after and b <= by)) for after, by in zip(left, right))
        # Their spans are closed: where one's end is another's beginning, a mass there counts for both, with us for one.
        apart = not set(left) & set(right)
        if apart and (ours < reached - 1e-6 or ours > reached + 0.01):
            wrong["gap"].append(f"{number}: {ours}, lifelines {reached}")
        weibull = told["weibull"]
        k, scale = weibull["shape"], weibull["scale"]
        fitter = WeibullFitter().fit_interval_censoring(np.maximum(left, 1e-9), right)
        off = [fitter.rho_ / k - 1, fitter.lambda_ / scale - 1]
        if max(map(abs, off)) > 1e-3:
            wrong["weibull"].append(f"{number}: {off}")
        at = lambda k, scale: log_likelihood(findings, k, scale)
        if not near(weibull["log_likelihood"], at(k, scale), 1e-9):
            wrong["summit"].append(f"{number}: {weibull['log_likelihood']} for {at(k, scale)}")
        around = max(at(k * a, scale * b) for a in (0.999, 1, 1.001) for b in (0.999, 1, 1.001))
        if around > at(k, scale) + 1e-9:
            wrong["summit"].append(f"{number}: higher by {around - at(k, scale)} beside it")
        if number < 3:
            for name, profile in (
                ("shape", lambda v: -optimize.minimize_scalar(lambda u: -at(v, math.exp(u)), bounds=(1, 9), method="bounded", options={"xatol": 1e-9}).fun),
                ("scale", lambda v: -optimize.minimize_scalar(lambda u: -at(math.exp(u), v), bounds=(-2, 4), method="bounded", options={"xatol": 1e-9}).fun),
            ):
                for end in weibull["intervals"][name].values():
                    drop = 2 * (at(k, scale) - profile(end))
                    if not near(drop, stats.chi2.ppf(0.95, 1), 1e-4):
                        wrong["profile"].append(f"{number}: {name} {end}: {drop}")
        known = found(chance, int(chance.integers(15, 80)), exact=True)
        known = [[a, b] for a, b in known if b is None or a == b] + [[30.0, 30.0], [50.0, 50.0], [90.0, 90.0]]
        told = ask(program, "life", {"findings": known})
        curve = KaplanMeierFitter().fit([a for a, _ in known], [b is not None for _, b in known])
        gone = 0.0
        for mass in told["turnbull"]:
            gone += mass["mass"]
            if mass["by"] is not None and not near(1 - gone, float(curve.predict(mass["by"])), 1e-6, 1e-7):
                wrong["km"].append(f"{number}: {1 - gone} at {mass['by']}")
    tell = lambda name, key: check(f"life: {name}", not wrong[key], f"seed {seed}: {wrong[key][:3]}")
    tell("Turnbull's masses add up and have the likelihood that is told", "npmle")
    tell("lifelines' estimate is nowhere likelier than Turnbull's, nor far less", "gap")
    tell("lifelines' Weibull agrees on interval-censored findings", "weibull")
    tell("nothing beside the Weibull is likelier, by scipy.stats alone", "summit")
    tell("profile intervals end where the likelihood has fallen by χ²/2, by SciPy's own search", "profile")
    tell("of exact and right-censored findings it is lifelines' Kaplan–Meier", "km")


def bands(program: str, chance: np.random.Generator, seed: int) -> None:
    """Intervals around the curves, and Wilson's of a share."""
    wrong = {"profile": [], "lifelines": [], "low": []}
    for number in range(4):
        findings = found(chance, int(chance.integers(12, 60)), exact=bool(number % 2))
        ages = [round(float(age), 1) for age in chance.uniform(15, 140, 3)]
        told = ask(program, "life", {"findings": findings, "ages": ages})
        if told["too_little"] or told["at"] is None:
            continue
        k, scale = told["weibull"]["shape"], told["weibull"]["scale"]
        top = log_likelihood(findings, k, scale)
        for at in told["at"]:
            for end in (at["low"], at["high"]):
                # ln H at this age is held where the interval ends; the shape is free.
                z = math.log(-math.log(end))
                worse = lambda u: -log_likelihood(findings, math.exp(u), at["hours"] * math.exp(-z / math.exp(u)))
                best = optimize.minimize_scalar(worse, bounds=(-2, 4), method="bounded", options={"xatol": 1e-10})
                drop = 2 * (top + best.fun)
                if not near(drop, stats.chi2.ppf(0.95, 1), 1e-2):
                    wrong["profile"].append(f"{number}: at {at['hours']} h, {end}: {drop}")
        # The lower end of every step leaves room for what a handful never shows.
        for step in told["survival"]:
            if not (0 <= step["low"] <= step["share"] <= step["high"] <= 1):
                wrong["low"].append(f"{number}: {step}")
        first = told["survival"][0]
        until = told["survival"][1]["since"]
        known = sum(by is not None and by <= until or after >= until for after, by in findings)
        wilson = stats.binomtest(known, known).proportion_ci(0.95, "wilson").low if known else 0.0
        if first["low"] > wilson + 1e-9:
            wrong["low"].append(f"{number}: {first['low']}, Wilson {wilson} of {known}")
    findings = found(chance, 3000, exact=True)
    findings = [[a, b] for a, b in findings if b is None or a == b]
    ages = [25.0, 50.0, 80.0, 110.0]
    told = ask(program, "life", {"findings": findings, "ages": ages})
    fitter = WeibullFitter().fit([a for a, _ in findings], [b is not None for _, b in findings], timeline=ages)
    theirs = fitter.confidence_interval_survival_function_
    for at in told["at"]:
        low, high = theirs.loc[at["hours"]]
        # S ± 1.96 standard errors there, the profile here: alike where there is much to go by.
        off = max(abs(at["low"] - low), abs(at["high"] - high)) / (high - low)
        if off > 0.06:
            wrong["lifelines"].append(f"{at} for {low}, {high}")
    tell = lambda name, key: check(f"life: {name}", not wrong[key], f"seed {seed}: {wrong[key][:3]}")
    tell("a fitted curve's interval ends where its profile has fallen by χ²/2, by SciPy's own search", "profile")
    tell("of many findings it is lifelines' confidence interval of the survival function", "lifelines")
    tell("Turnbull's interval holds the curve, and is nowhere narrower than SciPy's Wilson of none", "low")


def lifelines_npmle(left: np.ndarray, right: np.ndarray) -> tuple:
    masses, spans = npmle(left, right, tol=1e-9)
    return [(span.left, span.right) for span in spans], masses


def spans_kept(program: str, chance: np.random.Generator, seed: int) -> None:
    """Inspection intervals: the chance they promise, reckoned over the whole likelihood region."""
    wrong = []
    for number in range(3):
        findings = found(chance, 60, exact=False)
        age, borne = float(chance.uniform(5, 60)), float(chance.choice([0.01, 0.05]))
        told = ask(program, "life", {"findings": findings, "age": age, "chance": borne, "in_force": 1000})
        k, scale = told["weibull"]["shape"], told["weibull"]["scale"]
        failing = lambda k, scale, span: -math.expm1((age / scale) ** k - ((age + span) / scale) ** k)
        if not near(failing(k, scale, told["inspect"]["at_best"]), borne, 1e-6):
            wrong.append(f"{number}: at best")
        top = log_likelihood(findings, k, scale)
        worst = 0.0
        for a in np.linspace(0.55, 1.7, 90):
            for b in np.linspace(0.7, 1.5, 60):
                if 2 * (top - log_likelihood(findings, k * a, scale * b)) <= stats.chi2.ppf(0.90, 1):
                    worst = max(worst, failing(k * a, scale * b, told["inspect"]["allowed"]))
        # The grid comes near the worst point and never past it.
        if worst > borne * (1 + 1e-6) or worst < borne * 0.9:
            wrong.append(f"{number}: {worst} for {borne}")
    check("life: an inspection interval keeps its chance all over the likelihood region", not wrong, f"seed {seed}: {wrong}")


def air(program: str, chance: np.random.Generator, seed: int) -> None:
    wrong, humid = [], []
    metres = lambda value: {"value": value, "unit": "m"}
    for _ in range(SETS):
        height = float(chance.uniform(-300, 5000))
        # ambiance is asked by geometric height.
        standard = Atmosphere(Atmosphere.geop2geom_height(height))
        kelvin, pascal = float(standard.temperature[0]), float(standard.pressure[0])
        told = ask(program, "density-altitude", {
            "elevation": metres(height), "altimeter": {"value": 1013.25, "unit": "hPa"},
            "temperature": {"value": kelvin, "unit": "K"},
        })
        same = [
            near(told["density"]["value"], float(standard.density[0]), 1e-6),
            near(told["pressure"]["value"], pascal, 1e-6),
            near(told["density_altitude"]["value"], height, 1e-5, 0.05),
            near(told["pressure_altitude"]["value"], height, 1e-9, 1e-6),
        ]
        wrong += [] if all(same) else [f"{height}: {same}"]
        # Moist air as two gases (Dalton), which is another way to the same density.
        celsius, dew = float(chance.uniform(5, 38)), float(chance.uniform(-10, 5))
        told = ask(program, "density-altitude", {
            "pressure": {"value": pascal, "unit": "Pa"},
            "temperature": {"value": celsius, "unit": "Cel"}, "dew_point": {"value": dew, "unit": "Cel"},
        })
        # Buck 1981 (from memory), with its own constants.
        vapour = 611.21 * math.exp(17.502 * dew / (240.97 + dew)) * (1.0007 + 3.46e-8 * pascal)
        two = ((pascal - vapour) / 287.0529 + vapour / 461.523) / (celsius + 273.15)
        humid += [] if near(told["density"]["value"], two, 3e-5) else [f"{told['density']['value']} for {two}"]
    check(f"density-altitude: ambiance agrees at {SETS} heights", not wrong, f"seed {seed}: {wrong[:3]}")
    check("density-altitude: moist air as two gases has the same density", not humid, f"seed {seed}: {humid[:3]}")


def flight(program: str, chance: np.random.Generator, seed: int) -> None:
    wrong = []
    litres = lambda value: {"value": value, "unit": "L"}
    for _ in range(SETS):
        tank, fuel = map(float, chance.uniform(0.5, 10, 2))
        before, target = (float(chance.integers(20, 80)) for _ in range(2))
        told = ask(program, "fuel-mix", {"in_tank": litres(tank), "ratio_in_tank": before, "target_ratio": f"{target:g}:1", "add_fuel": litres(fuel)})
        petrol, oil = tank * before / (before + 1) + fuel, tank / (before + 1)
        if told["too_much_oil"]:
            ratio = (petrol + told["more_fuel"]["value"]) / oil
        else:
            ratio = petrol / (oil + told["add_oil"]["value"])
        wrong += [] if near(ratio, target) else [f"{ratio} for {target}"]
    check("fuel-mix: what comes out has the ratio that was wanted", not wrong, f"seed {seed}: {wrong[:3]}")
    wrong = []
    for number in range(SETS):
        burns = chance.normal(3.6, 0.3, int(chance.integers(3, 20)))
        told = ask(program, "endurance", {
            "fuel": litres(11), "reserve": litres(2), "burn_history": [{"value": burn, "unit": "L/h"} for burn in burns],
        })
        low, high = min(burns), max(burns)
        if len(burns) >= 8:
            n = len(burns)
            low, high = stats.t.interval(0.90, n - 1, np.mean(burns), np.std(burns, ddof=1) * math.sqrt(1 + 1 / n))
        times = told["flight_time"]
        same = near(times["low"]["value"], 9 / high, 1e-8) and near(times["high"]["value"], 9 / low, 1e-8)
        wrong += [] if same else [f"{number}: {times} for {9 / high}, {9 / low}"]
    check("endurance: SciPy's prediction interval agrees, least and most where flights are few", not wrong, f"seed {seed}: {wrong[:3]}")


if __name__ == "__main__":
    seed = random.SystemRandom().randrange(2**32)
    chance = np.random.default_rng(seed)
    for part in (trends, measures, lives, bands, spans_kept, air, flight):
        part(sys.argv[1], chance, seed)
    done()
