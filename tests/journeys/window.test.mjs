// The same journey in the app's real window.
import assert from "node:assert/strict";
import { test } from "node:test";
import { PERSON, PIN } from "./help/pilot.mjs";
import { openWindow } from "./help/window.mjs";
import { until, world } from "./help/world.mjs";
import { VALUES } from "./chapters/walking.mjs";

test("in the real window: first start, an invented machine, a walk, a signature, a verdict that the command line verifies", async (t) => {
  const here = world(t);
  let pilot = await openWindow(here);
  await firstStart(pilot);
  const machine = await triesOut(pilot, here);
  await pilot.goTo("walk", machine, "before-flight");
  await pilot.tap("go-on");
  await pilot.on("point");
  await pilot.walkTo("cylinder-base", VALUES);
  assert.match(await pilot.says("last-time"), /Old stain/);
  await pilot.answer("watch");
  await pilot.walkTo("propeller-hub", VALUES);

  // Closed in the middle of the walk, and opened again.
  await pilot.close();
  pilot = await openWindow(here);
  await pilot.on("machines");
  await pilot.goTo("walk", machine, "before-flight");
  await pilot.tap("go-on");
  await pilot.on("point");
  assert.equal(await pilot.point(), "propeller-hub");
  await pilot.walkTo(null, VALUES);

  await signs(pilot);
  const state = await (await pilot.of("verdict")).attribute("data-state");
  const verdict = here.cli("verdict", machine);
  assert.equal(state, "limited");
  assert.equal(verdict.said.state, state, "the command line says the same of the same data");
  await pilot.tap("to-machine");
  await givesAway(pilot, here);
});

async function firstStart(pilot) {
  await pilot.on("first");
  await pilot.type("name", PERSON);
  await pilot.type("pin", PIN);
  await pilot.type("pin-twice", PIN);
  await pilot.tap("begin");
  await pilot.on("machines");
}

/** The invented machine of the 125 class. */
async function triesOut(pilot, here) {
  await pilot.tap("empty-demo");
  await pilot.driver.one("h2 a");
  return here.cli("machine", "list").said.find(({ engine }) => engine === "Bramble 125").id;
}

async function signs(pilot) {
  await pilot.on("summary");
  await pilot.driver.press(await pilot.of("hold-to-sign"));
  await pilot.of("sign-sheet");
  await pilot.driver.release();
  await pilot.signWith(PIN);
  await pilot.on("verdict");
}

/** The window writes the file itself, and says where. */
async function givesAway(pilot, here) {
  await pilot.tap("export");
  const said = await until("the file", () => pilot.says("exported"));
  const [, file] = /Written to (.*\.jsonl)/.exec(said) ?? assert.fail(said);
  const verified = here.cli("verify", file);
  assert.equal(verified.code, 0, JSON.stringify(verified));
  assert.match(JSON.stringify(verified.said), new RegExp(PERSON));
}
