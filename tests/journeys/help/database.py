"""Looks into a stopped or running program's database from outside: python3 database.py FILE steps | FILE away MINUTES.

steps   prints what was done in the walks so far, as JSON, oldest first
away    makes all that was done in open walks so many minutes older: as if nobody had touched the app since
"""

import json
import sqlite3
import sys
from datetime import datetime, timedelta


def earlier(at: str, minutes: float) -> str:
    return (datetime.fromisoformat(at) - timedelta(minutes=minutes)).isoformat()


def main() -> None:
    file, what, *rest = sys.argv[1:]
    with sqlite3.connect(file, timeout=10) as db:
        rows = db.execute("SELECT draft, n, body FROM step ORDER BY draft, n").fetchall()
        if what == "steps":
            json.dump([json.loads(body) for _, _, body in rows], sys.stdout)
            return
        minutes = float(rest[0])
        for draft, n, body in rows:
            step = json.loads(body)
            step["at"] = earlier(step["at"], minutes)
            db.execute("UPDATE step SET body = ? WHERE draft = ? AND n = ?", (json.dumps(step), draft, n))
        for draft, started in db.execute("SELECT id, started FROM draft").fetchall():
            db.execute("UPDATE draft SET started = ? WHERE id = ?", (earlier(started, minutes), draft))


if __name__ == "__main__":
    main()
