"""Counting checks: one line each, and a script's exit code says whether all passed."""

import sys

_failed = 0


def check(name: str, passed: bool, why: str = "") -> bool:
    global _failed
    if passed:
        print(f"ok {name}")
    else:
        _failed += 1
        print(f"FAILED {name}" + (f": {why}" if why else ""))
    return passed


def done() -> None:
    sys.exit(1 if _failed else 0)
