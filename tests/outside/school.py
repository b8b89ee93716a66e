"""A school for outside programs: its root is our command line, its server ours, on this machine.

    school.py WITNESSMARK COMMAND…    runs COMMAND with the school's addresses in its environment
"""

import contextlib
import json
import os
import pathlib
import signal
import subprocess
import sys
import tempfile

from desk import Desk


class Root(Desk):
    """Who admits."""

    def admit(self, name: str, role: str) -> None:
        """Admits whoever of this name waits at the server's door."""
        waiting = [one["code"] for one in self.run("school", "waiting") if one["name"] == name]
        assert len(waiting) == 1, waiting
        self.sign("school", "admit", "--waiting", waiting[0], "--role", role)

    def revoke(self, name: str) -> None:
        """Ends the key of a person's one device, having heard of all that it had signed."""
        self.run("sync")
        self.sign("school", "revoke", name, "--why", "lost")
        self.run("sync")


@contextlib.contextmanager
def served(program: str, folder: pathlib.Path, founding: str):
    """The address of a server's process, which must end well when it is told to."""
    command = [program, "--data", str(folder), "--json", "server", "--listen", "127.0.0.1:0", "--school", founding]
    with open(folder / "log", "w", encoding="utf-8") as log:
        server = subprocess.Popen(
            command, stdout=subprocess.PIPE, stderr=log, stdin=subprocess.DEVNULL, text=True
        )
        try:
            line = server.stdout.readline()
            assert line, (folder / "log").read_text()
            yield json.loads(line)["address"]
        finally:
            server.send_signal(signal.SIGTERM)
            ended = server.wait(timeout=30)
    assert ended == 0, f"the server ended with {ended}"


@contextlib.contextmanager
def school(program: str):
    """Root and server address of an invented school."""
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        root = Root(program, folder / "root", "Invented instructor")
        root.sign("school", "create", "Invented school")
        founding = root.path("school.jsonl")
        root.run("school", "file", "--to", founding)
        (folder / "server").mkdir()
        with served(program, folder / "server", founding) as address:
            root.sign("school", "join", address)
            yield root, address


def main() -> int:
    program, *command = sys.argv[1:]
    with school(program) as (root, server):
        told = {"SCHOOL_SERVER": server, "SCHOOL_PROGRAM": program}
        told |= {"SCHOOL_DATA": root.path("data"), "SCHOOL_PIN_FILE": root.pin}
        return subprocess.run(command, env=os.environ | told, check=False).returncode


if __name__ == "__main__":
    sys.exit(main())
