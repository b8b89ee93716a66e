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
export function walked(here, machine, found = {}) {
  const signed = walk(here, machine, { ...good(here, machine), ...found });
  assert.ok(signed.said, signed.fault);
}

/** Begins a list and doesn't sign it: all points but some, or only the first ones. */
export function begun(here, machine, { found = {}, except = [], only = Infinity }) {
  const answers = Object.entries({ ...good(here, machine), ...found }).filter(([point]) => !except.includes(point));
  const kept = walk(here, machine, Object.fromEntries(answers.slice(0, only)), "--no-sign", "--leave-missing");
  assert.ok(kept.said, kept.fault);
}

/** A good answer to every point. */
function good(here, machine) {
  const answer = ({ ask }) =>
    ask.by === "words"
      ? ask.answers.find(({ means }) => means === "serviceable").id
      : { value: ask.low === null ? ask.high / 2 : (ask.low + ask.high) / 2, unit: ask.units[0].code };
  const { points } = here.cli("points", machine).said;
  return Object.fromEntries(points.map((point) => [point.id, answer(point)]));
}

function walk(here, machine, answers, ...more) {
  const file = join(here.folder, "answers.json");
  writeFileSync(file, JSON.stringify(answers));
  return here.cli("walk", machine, "--answers", file, "--pin-file", pinFile(here), ...more);
}

function pinFile(here) {
  const file = join(here.folder, "pin");
  writeFileSync(file, PIN + "\n", { mode: 0o600 });
  return file;
}
