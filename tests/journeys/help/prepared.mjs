// What was there before a journey begins: a person, a machine, lists signed, work begun. Made on the command line.
import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { PERSON, PIN } from "./pilot.mjs";
import { day } from "./world.mjs";

const WRENCH = "Wrench 2";

/** Registers a machine of the 125 class in a world; its id. */
export function registered(here, name = "Field bramble", signatory = PERSON) {
  signed(
    here,
    ...["machine", "add", "--name", name, "--engine", "bramble-125", "--hours", "41.6", "--flights", "63"],
    ...["--reserve-repacked", day(-30), "--repack-every", "365", "--signatory", signatory],
  );
  return here.cli("machine", "list").said.find((card) => card.name === name).id;
}

/** A machine of the 125 class that is fit to fly: its critical limit entered, walked round. */
export function fit(here, name, signatory) {
  const machine = registered(here, name, signatory);
  const band = ["--low", "125 lbf.in", "--high", "130 lbf.in"];
  const source = ["--document", "Workshop manual of the Bramble 125, issue 3 (invented)", "--page", "41"];
  signed(here, "confirm-limit", machine, "head-nut-torque", ...band, ...source);
  walked(here, machine);
  assert.equal(here.cli("verdict", machine).said.state, "fit");
  return machine;
}

/** Registers a wrench, calibrated so many days ago: one that may be used unless told otherwise. */
export function tooled(here, name = WRENCH, ago = 100) {
  const range = ["--low", "5 N.m", "--high", "25 N.m"];
  signed(here, "tool", "add", name, ...range, "--calibrated", day(-ago), "--every-days", "365");
}

/** Work that was begun; the list after it walked and signed, if so wished. */
export function worked(here, machine, jobs, { looked = false } = {}) {
  signed(here, "job", "begin", machine, "--did", ...jobs);
  if (looked) walked(here, machine, {}, "after-service");
}

/** Walks and signs a list: all of it serviceable but for what was found. */
export function walked(here, machine, found = {}, occasion = "before-flight") {
  const answers = { ...good(here, machine, occasion), ...found };
  const done = walk(here, machine, answers, "--occasion", occasion);
  assert.ok(done.said, done.fault);
}

/** Begins a list and doesn't sign it: all points but some, or only the first ones. */
export function begun(here, machine, { found = {}, except = [], only = Infinity }) {
  const answers = Object.entries({ ...good(here, machine), ...found }).filter(([point]) => !except.includes(point));
  const kept = walk(here, machine, Object.fromEntries(answers.slice(0, only)), "--no-sign", "--leave-missing");
  assert.ok(kept.said, kept.fault);
}

/** A good answer to every point. */
function good(here, machine, occasion = "before-flight") {
  const answer = ({ ask }) => {
    if (ask.by === "words") return ask.answers.find(({ means }) => means === "serviceable").id;
    if (ask.by === "torque") return { tool: WRENCH, eighths: Array(ask.nuts).fill(1) };
    return { value: ask.low === null ? ask.high / 2 : (ask.low + ask.high) / 2, unit: ask.units[0].code };
  };
  const { points } = here.cli("points", machine, "--occasion", occasion).said;
  return Object.fromEntries(points.map((point) => [point.id, answer(point)]));
}

function walk(here, machine, answers, ...more) {
  const file = join(here.folder, "answers.json");
  writeFileSync(file, JSON.stringify(answers));
  return here.cli("walk", machine, "--answers", file, "--pin-file", pinFile(here), ...more);
}

/** A deed of the command line that is signed. */
export function signed(here, ...args) {
  const done = here.cli(...args, "--pin-file", pinFile(here));
  assert.equal(done.code, 0, done.fault);
}

function pinFile(here) {
  const file = join(here.folder, "pin");
  writeFileSync(file, PIN + "\n", { mode: 0o600 });
  return file;
}
