// A torque wrench whose calibration ran out: no nut is turned with it before somebody said why, and the record keeps it.
import assert from "node:assert/strict";
import { test } from "node:test";
import { tightens } from "./chapters/tightening.mjs";
import { comesIn } from "./help/arrival.mjs";
import { fit, tooled, worked } from "./help/prepared.mjs";
import { until, world } from "./help/world.mjs";

const WHY = "The other wrench is at the laboratory";

test("a refused tool asks why first, then tightens, and the joint says so", async (t) => {
  const here = world(t);
  const machine = fit(here);
  tooled(here, "Grandfather's wrench", 900);
  worked(here, machine, ["head-retorqued"]);
  const { pilot } = await comesIn(t, here);
  await pilot.on("machines");
  await opensTheBench(pilot, machine);
  assert.match(await pilot.says("against"), /calibration ran out/);
  assert.equal(await pilot.nut(), null, "no nut has its turn");

  await pilot.type("reason", "  ");
  await pilot.tap("use-all-the-same");
  assert.equal((await pilot.fault()).kind, "reason-missing");
  assert.ok(!(await pilot.has("clicked")));
  await pilot.type("reason", WHY);

  // What was typed is still there after the page went away; typing alone doesn't open the bench.
  await pilot.page.reload();
  await until("the reason", async () => (await pilot.of("reason").inputValue()) === WHY);
  assert.equal(await pilot.nut(), null);
  await pilot.tap("use-all-the-same");
  await tightens(pilot, [1, 1, 2, 1]);
  assert.equal(await pilot.of("reason").inputValue(), WHY);
  await pilot.movesOn(() => pilot.tap("torque-done"));
  const { progress } = await pilot.ask("walk", { machine, occasion: "after-service" });
  const { given } = progress.points["torque-head-nuts"];
  assert.equal(given.means, "watch");
  assert.match(given.words, new RegExp(WHY));
});

/** The head nuts in the list after the work, the only tool in hand. */
async function opensTheBench(pilot, machine) {
  await pilot.goTo("walk", machine, "after-service", "point", "torque-head-nuts");
  const [tool] = await pilot.named("use-tool-");
  await pilot.tap(tool);
  await pilot.of("against").waitFor();
}
