"""Our program over a data folder of its own, for scripts that need a story told to it."""

import json
import pathlib
import subprocess

PIN = "271828"


class Desk:
    """One person's data folder."""

    def __init__(self, program: str, folder: pathlib.Path, signatory: str):
        folder.mkdir()
        self.program, self.folder, self.signatory = program, folder, signatory
        self.pin = self.write("pin", PIN + "\n")

    def path(self, name: str) -> str:
        return str(self.folder / name)

    def write(self, name: str, text: str) -> str:
        (self.folder / name).write_text(text, encoding="utf-8")
        return self.path(name)

    def run(self, *args: str):
        """What the program says, as JSON."""
        command = [self.program, "--data", self.path("data"), "--json", *args]
        ran = subprocess.run(command, capture_output=True, text=True, stdin=subprocess.DEVNULL)
        # 1 is an honest no: a machine on the ground.
        assert ran.returncode in (0, 1), f"{args}: {ran.stderr}"
        return json.loads(ran.stdout)

    def sign(self, *args: str):
        return self.run(*args, "--pin-file", self.pin, "--signatory", self.signatory)

    def walk(self, machine: str, occasion: str, found: dict):
        """Walks a list, everything serviceable but what is `found`; None leaves a point out."""
        points = self.run("points", machine, "--occasion", occasion)["points"]
        answers = {point["id"]: good(point["ask"]) for point in points} | found
        answers = {point: answer for point, answer in answers.items() if answer is not None}
        file = self.write("answers.json", json.dumps(answers))
        args = ("--occasion", occasion, "--answers", file, "--leave-missing")
        return self.sign("walk", machine, *args)

    def file(self, verb: str, what: str, name: str, *args: str) -> pathlib.Path:
        """A file that a verb writes."""
        self.run(verb, what, self.path(name), *args)
        return self.folder / name


def good(ask: dict):
    """The answer that is serviceable, the middle of a band, every nut moved by one eighth."""
    if ask["by"] == "words":
        return next(answer["id"] for answer in ask["answers"] if answer["means"] == "serviceable")
    if ask["by"] == "torque":
        return {"tool": "Wrench 2", "eighths": [1] * ask["nuts"]}
    low, high = ask["low"], ask["high"]
    value = (low + high) / 2 if None not in (low, high) else low or (high / 2 if high else 1.0)
    return {"value": value, "unit": ask["units"][0]["code"]}
