// Work on the machine from "I worked on it" to the flight after it; for the browser and for the window.
import assert from "node:assert/strict";
import { PIN } from "../help/pilot.mjs";
import { tightens } from "./tightening.mjs";
import { VALUES } from "./walking.mjs";

/** Says what was done, sees what comes of it, and signs: from then on the machine stays on the ground. */
export async function beginsWork(pilot, job) {
  await pilot.tap("work");
  await pilot.on("work");
  await pilot.tap(`job-${job}`);
  await pilot.tap("to-plan");
  await pilot.on("plan");
  assert.match(await pilot.says("plan-independent"), /Head nuts/);
  await pilot.sign();
  await pilot.on("machine");
  assert.equal(await pilot.attribute("job", "data-ready"), "false");
  assert.equal(await pilot.attribute("to-verdict", "data-state"), "grounded");
}

/** From the machine to the head nuts in the list after the work. */
export async function walksToTheHeadNuts(pilot) {
  await pilot.tap("walk-after-service");
  await pilot.on("walk-map");
  await pilot.tap("go-on");
  await pilot.on("point");
  await pilot.walkTo("torque-head-nuts", VALUES);
}

/** All of the list after the work, each nut moved as far as it says; signed without holding. */
export async function walksAfterTheWork(pilot, eighths) {
  await walksToTheHeadNuts(pilot);
  await pilot.tap(await usableTool(pilot));
  await tightens(pilot, eighths);
  await pilot.movesOn(() => pilot.tap("torque-done"));
  await signsTheList(pilot);
}

/** The rest of the list, and its signature: it grounds until somebody else has looked. */
export async function signsTheList(pilot) {
  await pilot.walkTo(null, VALUES);
  await pilot.on("summary");
  await pilot.tap("sign-with-pin");
  await pilot.signWith(PIN);
  await pilot.on("verdict");
  assert.equal(await pilot.attribute("verdict", "data-state"), "grounded");
  await pilot.tap("to-machine");
  await pilot.on("machine");
  assert.match(await pilot.says("job-lacks"), /Another person/);
}

/** The only tool on the bench. */
async function usableTool(pilot) {
  const [tool] = await pilot.named("use-tool-");
  return tool;
}

/** Another person looks and signs on the same device, with a key and a PIN of their own. */
export async function looksHere(pilot, name, pin) {
  await pilot.tap("job-second");
  await pilot.on("second");
  await pilot.tap("second-here");
  await pilot.on("second-here");
  await pilot.type("second-name", name);
  await pilot.type("second-pin", pin);
  await pilot.type("second-pin-twice", pin);
  await pilot.tap("second-add");
  await pilot.tap("joint-head-nuts-serviceable");
  await pilot.sign(pin);
  await pilot.on("machine");
  assert.equal(await pilot.attribute("job", "data-ready"), "true");
}

/** Released: it may fly, within what the work leaves behind. */
export async function releases(pilot, { after }) {
  await pilot.tap("job-release");
  await pilot.on("release");
  await pilot.sign();
  await pilot.on("verdict");
  assert.equal(await pilot.attribute("verdict", "data-state"), "limited");
  assert.deepEqual((await pilot.named("reason-")).toSorted(), after);
  await pilot.tap("to-machine");
  await pilot.on("machine");
}

/** After landing: one tap if a tank was used up, one on how long it ran. */
export async function logsAFlight(pilot, { tank = false } = {}) {
  await pilot.tap("log");
  await pilot.on("log");
  if (tank) await pilot.tap("tank");
  await pilot.tap("minutes-30");
  await pilot.tap("log-done");
  await pilot.on("machine");
}

/** The tank is used up: it stays on the ground until the head is torqued again. */
export async function isDueAgain(pilot) {
  assert.equal(await pilot.attribute("to-verdict", "data-state"), "grounded");
  const [due] = await pilot.named("due-", '[data-standing="over"]');
  assert.match(await pilot.says(due), /Re-torque the head/);
  await pilot.tap("to-verdict");
  await pilot.on("verdict");
  assert.match(await pilot.says("reason-follow-up-over"), /Re-torque the head/);
  await pilot.tap("to-machine");
  await pilot.on("machine");
}
