// Head nuts torqued, seen by a second pair of eyes, flown, and torqued again after the first tank.
import assert from "node:assert/strict";
import { test } from "node:test";
import { takesPapersAway } from "./chapters/papers.mjs";
import { givenAway } from "./chapters/record.mjs";
import * as second from "./chapters/second-look.mjs";
import { goesAcross, goesOnAfterwards, mistakesTheUnit, tightens } from "./chapters/tightening.mjs";
import { VALUES } from "./chapters/walking.mjs";
import * as work from "./chapters/work.mjs";
import { comesIn } from "./help/arrival.mjs";
import { PIN } from "./help/pilot.mjs";
import { fit } from "./help/prepared.mjs";
import { day, world } from "./help/world.mjs";

test("head nuts torqued by the owner, seen by an instructor's phone, torqued again after the first tank: fit to fly", async (t) => {
  const here = world(t);
  const machine = fit(here);
  const { pilot: owner } = await comesIn(t, here);
  const { pilot: instructor } = await comesIn(t, world(t));
  await instructor.begin(second.INSTRUCTOR.name, second.INSTRUCTOR.pin);

  await registersAWrench(owner);
  await owner.goTo("machine", machine);
  await work.beginsWork(owner, "head-retorqued");
  await work.walksToTheHeadNuts(owner);
  await choosesTheWrench(owner);
  const moved = [1, 1, 2, 1];
  goesAcross([...(await goesOnAfterwards(owner, moved)), ...(await tightens(owner, moved))]);
  await mistakesTheUnit(owner);
  await work.signsTheList(owner);

  const ask = await second.asks(owner);
  await second.samePersonIsRefused(owner, ask);
  const reply = await second.instructorLooks(instructor, ask);
  await second.takesTheReply(owner, machine, reply);
  await work.releases(owner, { after: ["reason-first-flight", "reason-follow-up-due"] });
  await work.logsAFlight(owner, { tank: true });
  await work.isDueAgain(owner);

  await work.beginsWork(owner, "head-retorqued-again");
  await work.walksAfterTheWork(owner, [0, 1, 1, 0]);
  await work.looksHere(owner, "Mo Tansy", "141421");
  await work.releases(owner, { after: ["reason-first-flight"] });
  await work.logsAFlight(owner);
  await walksRound(owner);
  await takesPapersAway(owner);
  const verified = here.cli("verify", await givenAway(owner, here));
  for (const name of [second.INSTRUCTOR.name, "Mo Tansy"]) assert.match(JSON.stringify(verified.said), new RegExp(name));
});

async function registersAWrench(pilot) {
  await pilot.tap("to-tools");
  await pilot.tap("tool-new");
  await pilot.on("tool-form");
  for (const [field, text] of Object.entries({ name: "Wrench 2", low: "5", high: "25", calibrated: day(-100) }))
    await pilot.type(`tool-${field}`, text);
  await pilot.sign();
  await pilot.on("torque-tools");
  const [name] = await pilot.named("tool-", "[data-usable]");
  assert.equal(await pilot.attribute(name, "data-usable"), "true");
}

async function choosesTheWrench(pilot) {
  const [tool] = await pilot.named("use-tool-");
  await pilot.tap(tool);
}

/** The list before flight, walked and signed: nothing holds the machine back. */
async function walksRound(pilot) {
  await pilot.tap("walk-before-flight");
  await pilot.tap("go-on");
  await pilot.on("point");
  await pilot.walkTo(null, VALUES);
  await pilot.on("summary");
  await pilot.tap("sign-with-pin");
  await pilot.signWith(PIN);
  await pilot.on("verdict");
  assert.equal(await pilot.attribute("verdict", "data-state"), "fit");
  await pilot.tap("to-machine");
  await pilot.on("machine");
}
