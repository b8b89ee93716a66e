"""A school for outside programs: its root is our program, its server ours, on this machine.

    school.py WITNESSMARK COMMAND…    runs COMMAND with the school's addresses in its environment
"""

import contextlib
import os
import pathlib
import signal
import subprocess
import sys
import tempfile

import requests

PIN = "271828"


class Process:
    """A program that prints its address once it answers."""

    def __init__(self, *command: str):
        self.ran = subprocess.Popen(command, stdout=subprocess.PIPE, stdin=subprocess.DEVNULL, text=True)
        self.told = self.ran.stdout.readline().strip()
        assert self.told, f"{command} didn't start"

    def stop(self) -> int:
        self.ran.send_signal(signal.SIGTERM)
        return self.ran.wait(timeout=30)


class Root:
    """Who admits: our program, asked on the loopback address that it prints."""

    def __init__(self, program: str, folder: pathlib.Path):
        self.process = Process(program, "--data", str(folder), "serve-ui", "--port", "0")
        self.address = self.process.told.split("/?")[0]
        self.session = requests.Session()
        self.session.get(self.process.told, timeout=30).raise_for_status()

    def call(self, call: str, /, **args):
        answer = self.session.post(f"{self.address}/call", json={"call": call, "args": args}, timeout=60)
        assert answer.ok, f"{call}: {answer.text}"
        return answer.json()

    def admit(self, name: str, role: str) -> None:
        """Admits whoever of this name waits at the server's door."""
        waiting = [one for one in self.call("school-waiting") if one["name"] == name]
        assert len(waiting) == 1, waiting
        self.call("school-admit", text=waiting[0]["text"], role=role, until=None, pin=PIN)
        self.call("sync")

    def end(self, device: str) -> None:
        """Ends a key, having heard of all that it had signed."""
        self.call("sync")
        self.call("key-end", device=device, reason="lost", pin=PIN)
        self.call("sync")


@contextlib.contextmanager
def school(program: str):
    """Root and server address of an invented school."""
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        root = Root(program, folder / "root")
        server = None
        try:
            root.call("begin", name="Invented instructor", pin=PIN)
            root.call("school-found", name="Invented school", pin=PIN)
            founding = folder / "school.jsonl"
            founding.write_text(root.call("school-file")["text"], encoding="utf-8")
            serve = pathlib.Path(program).parent / "examples" / "serve"
            server = Process(str(serve), str(folder / "school.db"), str(founding))
            root.call("school-follow", address=server.told, pin=PIN)
            yield root, server.told
        finally:
            ended = [process.stop() for process in (root.process, server) if process]
        assert ended == [0, 0], f"they ended with {ended}"


def main() -> int:
    program, *command = sys.argv[1:]
    with school(program) as (root, server):
        cookie = "; ".join(f"{name}={value}" for name, value in root.session.cookies.items())
        told = {"SCHOOL_SERVER": server, "SCHOOL_ROOT": root.address, "SCHOOL_COOKIE": cookie, "SCHOOL_PIN": PIN}
        return subprocess.run(command, env=os.environ | told, check=False).returncode


if __name__ == "__main__":
    sys.exit(main())
