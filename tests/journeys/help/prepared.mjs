// What was there before a journey begins: a person, a machine, lists signed. Made on the command line.
import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { PERSON, PIN } from "./pilot.mjs";
import { day } from "./world.mjs";

/** Registers a machine of the 125 class in a world; its id. */
export function registered(here) {
  const made = here.cli(
    ...["machine", "add", "--name", "Field bramble", "--engine", "bramble-125", "--hours", "41.6", "--flights", "63"],
    ...["--reserve-repacked", day(-30), "--repack-every", "365", "--signatory", PERSON, "--pin-file", pinFile(here)],
  );
  assert.equal(made.code, 0, made.fault);
  return here.cli("machine", "list").said[0].id;
}

/** Walks and signs a list: all of it serviceable but for what was found. */
export function walked(here, machine, found = {}, occasion = "before-flight") {
  const points = here.cli("points", machine, "--occasion", occasion).said.points;
  const good = ({ ask }) =>
    ask.by === "words"
      ? ask.answers.find(({ means }) => means === "serviceable").id
      : { value: ask.low === null ? ask.high / 2 : (ask.low + ask.high) / 2, unit: ask.units[0].code };
  const file = join(here.folder, "answers.json");
  writeFileSync(file, JSON.stringify({ ...Object.fromEntries(points.map((point) => [point.id, good(point)])), ...found }));
  const signed = here.cli("walk", machine, "--occasion", occasion, "--answers", file, "--pin-file", pinFile(here));
  assert.ok(signed.said, signed.fault);
  return points;
}

function pinFile(here) {
  const file = join(here.folder, "pin");
  writeFileSync(file, PIN + "\n", { mode: 0o600 });
  return file;
}
