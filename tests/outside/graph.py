"""Plans of taking apart, against PyPI's networkx: on the catalogue's own graphs and on random ones,
the closure is the ancestors, the order is topological, refit is its reverse; and a graph with a
round is refused with a round that networkx finds to be one.

    graph.py WITNESSMARK
"""

import json
import pathlib
import random
import re
import subprocess
import sys
import tempfile
import tomllib

import networkx as nx

from tally import check, done

CATALOGUE = pathlib.Path(__file__).resolve().parents[2] / "shared" / "catalogue"
GRAPHS = 60


def needs(graph: dict) -> nx.DiGraph:
    """From what must be gone first to what it frees, read from the file anew."""
    free = nx.DiGraph()
    for thing in graph["part"] + graph["joint"]:
        free.add_node(thing["id"])
    for thing in graph["part"] + graph["joint"]:
        free.add_edges_from((first, thing["id"]) for first in thing.get("after", []))
    for joint in graph["joint"]:
        free.add_edges_from((joint["id"], part) for part in joint["parts"])
    return free


def fitted(graph: dict, features: list) -> dict:
    """What an engine with these features has of a graph."""
    parts = [part for part in graph["part"] if set(part.get("feature", [])) <= set(features)]
    there = {part["id"] for part in parts}
    joints = [joint for joint in graph["joint"] if set(joint["parts"]) <= there]
    there |= {joint["id"] for joint in joints}
    keep = lambda thing: {**thing, "after": [name for name in thing.get("after", []) if name in there]}
    jobs = []
    for job in graph["job"]:
        named = [name for name in job.get("off", []) + job.get("loosened", []) if name in there]
        jobs += [{"id": job["id"], "named": named}] if named else []
    return {"part": [keep(part) for part in parts], "joint": [keep(joint) for joint in joints], "job": jobs}


def ids(items: list) -> list:
    return [next(iter(item.values())) for item in items]


def faults(graph: dict, jobs: list, plan: dict) -> list:
    """What networkx finds wrong in a plan."""
    free = needs(graph)
    named = {name for job in graph["job"] if job["id"] in jobs for name in job["named"]}
    closure = named.union(*(nx.ancestors(free, name) for name in named))
    order = ids(plan["take_off"])
    place = {name: number for number, name in enumerate(order)}
    parts = {part["id"] for part in graph["part"]}
    wrong = []
    if set(order) != closure or len(order) != len(closure):
        wrong.append(f"disturbs {sorted(set(order) ^ closure)}")
    elif any(place[first] > place[then] for first, then in free.subgraph(closure).edges):
        wrong.append("the order is not topological")
    if plan["refit"] != plan["take_off"][::-1]:
        wrong.append("refit is not the reverse")
    if set(plan["disturbed"]["parts"]) != closure & parts or set(plan["disturbed"]["joints"]) != closure - parts:
        wrong.append("disturbed is not the closure")
    if any(("part" in item) != (next(iter(item.values())) in parts) for item in plan["take_off"]):
        wrong.append("a part is called a joint, or a joint a part")
    critical = {joint["id"] for joint in graph["joint"] if joint.get("critical")}
    if set(plan["independent"]) != closure & critical:
        wrong.append("independent is not the critical joints disturbed")
    return wrong


def refit(program: str, request: dict) -> tuple:
    run = subprocess.run(
        [program, "compute", "refit"], input=json.dumps(request), capture_output=True, text=True, check=False
    )
    return run.returncode, run.stdout, run.stderr


def shipped(program: str) -> None:
    features = {}
    for file in sorted((CATALOGUE / "engines").glob("*.toml")):
        sheet = tomllib.loads(file.read_text())
        features[sheet["id"]] = sheet.get("features", [])
    for file in sorted((CATALOGUE / "assembly").glob("*.toml")):
        whole = tomllib.loads(file.read_text())
        for engine in whole["serves"]:
            graph = fitted(whole, features[engine])
            wrong = [] if nx.is_directed_acyclic_graph(needs(graph)) else ["has a round"]
            jobs = [[job["id"]] for job in graph["job"]] + [[job["id"] for job in graph["job"]]]
            for names in jobs:
                code, told, why = refit(program, {"engine": engine, "jobs": names})
                wrong += faults(graph, names, json.loads(told)) if code == 0 else [why]
            check(f"{engine}: networkx agrees with all of {len(jobs)} plans", not wrong, "; ".join(wrong[:3]))


def invented(chance: random.Random) -> dict:
    """A random graph: things in an order in which all come apart, then shuffled."""
    size = chance.randint(4, 40)
    edges = nx.gnp_random_graph(size, chance.uniform(0.03, 0.4), seed=chance.randrange(2**32), directed=True)
    part = [chance.random() < 0.5 for _ in range(size - 2)] + [True, True]
    name = lambda thing: f"{'p' if part[thing] else 'j'}{thing}"
    graph = {"serves": ["none"], "part": [], "joint": [], "job": []}
    for thing in range(size):
        after = [name(first) for first in edges.predecessors(thing) if first < thing and part[first]]
        if part[thing]:
            graph["part"].append({"id": name(thing), "component": "engine", "after": after})
            continue
        joins = [name(then) for then in edges.successors(thing) if then > thing and part[then]]
        joins = joins if len(joins) > 1 else [name(size - 2), name(size - 1)]
        critical = chance.random() < 0.3
        graph["joint"].append(
            {"id": name(thing), "parts": joins, "fastener": "nut", "after": after, "critical": critical}
        )
    for number in range(chance.randint(1, 4)):
        some = chance.sample(range(size), chance.randint(1, min(4, size)))
        off, loosened = [name(t) for t in some if part[t]], [name(t) for t in some if not part[t]]
        graph["job"].append({"id": f"job{number}", "off": off, "loosened": loosened})
    for things in (graph["part"], graph["joint"]):
        chance.shuffle(things)
    return graph


def written(graph: dict) -> str:
    """As TOML; JSON's strings, lists and truth values are TOML's too."""
    lines = [f"serves = {json.dumps(graph['serves'])}"]
    for table in ("part", "joint", "job"):
        for thing in graph[table]:
            lines.append(f"[[{table}]]")
            lines += [f"{key} = {json.dumps(value)}" for key, value in thing.items()]
    return "\n".join(lines) + "\n"


def random_ones(program: str, folder: pathlib.Path) -> None:
    seed = random.SystemRandom().randrange(2**32)
    chance = random.Random(seed)
    wrong, rounds, found = [], 0, []
    for number in range(GRAPHS):
        graph = invented(chance)
        # Some get a need turned round, which may or may not make a round.
        if number % 2:
            first, then = chance.choice(graph["part"]), chance.choice(graph["part"] + graph["joint"])
            then["after"] = then["after"] + [first["id"]]
        file = folder / f"{number}.toml"
        file.write_text(written(graph))
        names = chance.sample([job["id"] for job in graph["job"]], chance.randint(1, len(graph["job"])))
        # As a file, or whole.
        given = str(file) if number % 3 else graph
        code, told, why = refit(program, {"graph": given, "jobs": names})
        free = needs(graph)
        if nx.is_directed_acyclic_graph(free):
            graph["job"] = [{"id": job["id"], "named": job["off"] + job["loosened"]} for job in graph["job"]]
            if code != 0:
                wrong.append(f"{number}: {why}")
                continue
            wrong += [f"{number}: {fault}" for fault in faults(graph, names, json.loads(told))]
        else:
            rounds += 1
            message = json.loads(why)["message"] if code == 2 else ""
            for path in re.findall(r"(?:`\w+` → )+`\w+`", message):
                walked = re.findall(r"`(\w+)`", path)
                # Each waits for the next: the edge runs from what must be gone first.
                whole = walked[0] == walked[-1] and all(
                    free.has_edge(next_, waits) for waits, next_ in zip(walked, walked[1:])
                )
                found.append(whole)
            wrong += [] if code == 2 and "→" in message else [f"{number}: a round was not refused: {message}"]
    check(f"random graphs: networkx agrees with every plan ({GRAPHS - rounds})", not wrong, f"seed {seed}: {wrong[:3]}")
    check(f"random graphs: every round told is one ({rounds})", rounds > 0 and found and all(found), f"seed {seed}")


if __name__ == "__main__":
    shipped(sys.argv[1])
    with tempfile.TemporaryDirectory() as folder:
        random_ones(sys.argv[1], pathlib.Path(folder))
    done()
