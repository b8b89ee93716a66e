// Work on the machine in the app's real window: head nuts torqued, seen by another person on the same device, flown.
import assert from "node:assert/strict";
import { test } from "node:test";
import * as work from "./chapters/work.mjs";
import { fit, tooled } from "./help/prepared.mjs";
import { openWindow } from "./help/window.mjs";
import { world } from "./help/world.mjs";

test("in the real window: head nuts torqued, seen by another person here, released, flown until the re-torque is due", async (t) => {
  const here = world(t);
  const machine = fit(here);
  tooled(here);
  const pilot = await openWindow(here);
  await pilot.on("machines");
  await pilot.goTo("machine", machine);
  await pilot.on("machine");
  await work.beginsWork(pilot, "head-retorqued");
  await work.walksAfterTheWork(pilot, [1, 1, 2, 1]);
  await work.looksHere(pilot, "Mo Tansy", "141421");
  await work.releases(pilot, { after: ["reason-first-flight", "reason-follow-up-due"] });
  await work.logsAFlight(pilot, { tank: true });
  await work.isDueAgain(pilot);
  assert.equal(here.cli("verdict", machine).said.state, "grounded", "the command line says the same of the same data");
});
