"""Seconds that a library takes for what numbers.rs measures ours for; data on standard input.

    baseline.py theilslopes|mann-kendall|weibull|turnbull
"""

import json
import resource
import signal
import sys
import time
import warnings

import numpy as np

warnings.filterwarnings("ignore")


def computation(name: str, data: dict):
    if name == "theilslopes":
        from scipy.stats import theilslopes

        return lambda: theilslopes(data["y"], data["x"], 0.95)
    if name == "mann-kendall":
        from pymannkendall import original_test

        return lambda: original_test(data["y"])
    left = np.array([after for after, _ in data["findings"]])
    right = np.array([np.inf if by is None else by for _, by in data["findings"]])
    if name == "weibull":
        from lifelines import WeibullFitter

        return lambda: WeibullFitter().fit_interval_censoring(np.maximum(left, 1e-9), right)
    from lifelines.fitters.npmle import npmle

    return lambda: npmle(left, right)


if __name__ == "__main__":
    # What needs more than this is told as too much, not swapped through.
    resource.setrlimit(resource.RLIMIT_AS, (6 << 30, 6 << 30))
    signal.alarm(600)
    compute = computation(sys.argv[1], json.load(sys.stdin))
    start = time.perf_counter()
    compute()
    print(time.perf_counter() - start)
