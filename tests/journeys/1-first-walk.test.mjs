// From first start to a verdict that anyone can verify: a pilot's whole way, on a phone's screen.
import assert from "node:assert/strict";
import { test } from "node:test";
import { firstStart, nobodyLooked, registers } from "./chapters/beginning.mjs";
import { checkedOnTheScreen, givenAway, laidOpen, pictureIsClean } from "./chapters/record.mjs";
import { fitWithLimits, holdsAndSigns, onTheTimeline, saidBack, saidBackEarly } from "./chapters/signing.mjs";
import * as walking from "./chapters/walking.mjs";
import { browse } from "./help/browser.mjs";
import { away } from "./help/database.mjs";
import { Pilot } from "./help/pilot.mjs";
import { serve } from "./help/server.mjs";
import { world } from "./help/world.mjs";

test("a pilot registers a machine, walks round it, signs, and gets a verdict that anyone can verify", async (t) => {
  const here = world(t);
  const context = await browse(t);
  let server = await serve(here);
  const comesIn = async () => {
    const pilot = new Pilot(await context.newPage());
    // A clock that can be put forward: how long a point was looked at is said back.
    await pilot.page.clock.install();
    await pilot.page.goto(server.address);
    return pilot;
  };

  let pilot = await comesIn();
  await firstStart(pilot);
  const machine = await registers(pilot);
  await nobodyLooked(pilot);

  const list = here.cli("points", machine, "--occasion", "before-flight").said.points;
  await walking.startsTheList(pilot, machine);
  await walking.movesOnlyWhenDurable(pilot, here);
  await walking.walks(pilot, here, list, "papers");
  await pilot.page.clock.fastForward("00:20");
  await pilot.answer();
  await walking.walks(pilot, here, list, "fuel-mix");
  const left = await walking.leaves(pilot, list);
  await walking.walks(pilot, here, list, "cylinder-base");
  await walking.findsAStain(pilot, here);
  await saidBackEarly(pilot, machine, [left, "canopy"]);
  await pilot.tap("go-on");
  const slipped = await walking.takesBack(pilot, here);
  await walking.walks(pilot, here, list, "throttle-free-travel");

  // The phone dies, and is switched on again.
  await pilot.page.close();
  await server.die();
  server = await serve(here);
  pilot = await comesIn();
  await resumes(pilot, list, "throttle-free-travel");
  await walking.measuresInInches(pilot);
  await walking.walks(pilot, here, list, "propeller-tracking");

  // Somebody called the pilot away for an hour.
  await pilot.page.close();
  await server.stop();
  away(here, 60);
  server = await serve(here);
  pilot = await comesIn();
  await pilot.tap("walk");
  await walking.interrupted(pilot, ["propeller-hub", "propeller-edges", "propeller-faces"]);
  await walking.walks(pilot, here, list.filter(({ id }) => id !== left), "walk-complete");
  await pilot.answer();
  assert.equal(pilot.point(), left, "what was left comes last");
  await pilot.answer();

  await saidBack(pilot, { found: "cylinder-base", unhurried: "papers" });
  await holdsAndSigns(pilot);
  await fitWithLimits(pilot);
  await onTheTimeline(pilot, machine);
  await laidOpen(pilot, { list, slipped });
  await pictureIsClean(pilot, JSON.parse(await pilot.of("payload").textContent()));
  await pilot.tap("back");
  await pilot.on("machine");
  const file = await givenAway(pilot, here);
  await checkedOnTheScreen(pilot, here, file);
});

/** The list goes on exactly where the phone died. */
async function resumes(pilot, list, point) {
  const done = list.findIndex(({ id }) => id === point) - 1; // one was left
  await pilot.on("machines");
  assert.match(await pilot.says("walk"), new RegExp(`${done} of ${list.length}`));
  await pilot.tap("walk");
  await pilot.on("point");
  assert.ok(!(await pilot.has("stepped-back")), "a short pause is no interruption");
  assert.equal(pilot.point(), point);
}
