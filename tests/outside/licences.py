"""Every dependency's licence against the list of those we take; offline, from cargo's and npm's own words."""

import json
import pathlib
import re
import subprocess
import sys

# Permissive, or copyleft by file only: all may be shipped in a program of ours.
TAKEN = {
    "MIT", "MIT-0", "Apache-2.0", "Apache-2.0 WITH LLVM-exception", "BSD-2-Clause", "BSD-3-Clause", "ISC", "Zlib",
    "0BSD", "CC0-1.0", "Unlicense", "Unicode-3.0", "MPL-2.0", "OFL-1.1", "BSL-1.0", "CDLA-Permissive-2.0",
}
# Named one by one, with why.
EXCEPTED = {}


def taken(expression: str) -> bool:
    """Whether an SPDX expression can be met: every AND part by one of its OR parts."""
    text = expression.replace("/", " OR ").strip()
    if text.startswith("(") and text.endswith(")") and ")" not in text[1:-1]:
        text = text[1:-1]
    parts = re.split(r"\s+AND\s+(?![^(]*\))", text)
    if len(parts) > 1:
        return all(taken(part) for part in parts)
    return any(part.strip(" ()") in TAKEN for part in re.split(r"\s+OR\s+", text))


def main() -> int:
    root = pathlib.Path(__file__).resolve().parents[2]
    metadata = subprocess.run(
        ["cargo", "metadata", "--format-version", "1", "--locked"], cwd=root, check=True, capture_output=True
    )
    crates = [
        (f"{package['name']} {package['version']}", package.get("license") or "")
        for package in json.loads(metadata.stdout)["packages"]
        if package["source"]
    ]
    modules = [
        (f"{words['name']} {words['version']}", words.get("license") or "")
        for file in (root / "ui/node_modules").rglob("package.json")
        if "name" in (words := json.loads(file.read_text())) and "version" in words
    ]
    assert len(crates) > 100 and len(modules) > 5, "nothing was read"
    refused = [(n, l) for n, l in crates + modules if not taken(l) and n.split(" ")[0] not in EXCEPTED]
    for name, licence in refused:
        print(f"{name}: {licence or 'no licence named'}: not on the list of licences we take")
    assert not taken("GPL-3.0-only") and taken("(MIT OR GPL-3.0) AND ISC"), "the check itself is wrong"
    print(f"licences: {len(crates)} crates, {len(modules)} modules, {len(refused)} refused")
    return 1 if refused else 0


if __name__ == "__main__":
    sys.exit(main())
