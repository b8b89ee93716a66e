// What a machine carries with it: a defect that may wait, what falls due again and again, a component with its own time.
import assert from "node:assert/strict";
import { test } from "node:test";
import { comesIn } from "./help/arrival.mjs";
import { fit, registered, walked } from "./help/prepared.mjs";
import { day, world } from "./help/world.mjs";

async function opens(pilot, machine) {
  await pilot.goTo("machine", machine);
  await pilot.on("machine");
}

const isIn = (pilot, state) => pilot.page.locator(`[data-test="to-verdict"][data-state="${state}"]`).waitFor();

test("a defect waits by its owner's signature, within limits; past them it grounds", async (t) => {
  const here = world(t);
  const machine = fit(here);
  walked(here, machine, { "cage-net": "torn" });
  const { pilot } = await comesIn(t, here);
  await opens(pilot, machine);
  await isIn(pilot, "grounded");
  await pilot.tap("defer-cage-net");
  await pilot.on("defer");
  await pilot.type("defer-condition", "No passenger, no other pilot");
  await pilot.type("defer-reason", "A spare net is on its way");
  await pilot.sign();
  assert.equal((await pilot.fault()).kind, "deferral-limit-missing");
  await pilot.type("defer-hours", "42,0");
  await pilot.sign("000000");
  await pilot.page.locator('[data-kind="pin-wrong"]').waitFor();
  assert.equal(await pilot.of("defer-reason").inputValue(), "A spare net is on its way", "nothing typed is lost");
  await pilot.sign();
  await pilot.on("machine");
  await isIn(pilot, "limited");
  assert.match(await pilot.says("entry-defect-deferred"), /Juno Larch/);

  // 41.6 h and half an hour are past 42 h; taken back, it is as before.
  await pilot.tap("log");
  await pilot.tap("minutes-30");
  await pilot.of("log-undo").waitFor();
  assert.equal(here.cli("verdict", machine).said.state, "grounded");
  await pilot.tap("log-undo");
  await pilot.of("minutes-30").waitFor();
  await opens(pilot, machine);
  await isIn(pilot, "limited");
});

test("what falls due again and again is kept, comes due with the flights, and is done", async (t) => {
  const here = world(t);
  const machine = registered(here);
  const { pilot } = await comesIn(t, here);
  await opens(pilot, machine);
  await pilot.tap("due-new");
  await pilot.on("due");
  await pilot.type("due-title", "Grease the hinge");
  await pilot.sign();
  assert.ok((await pilot.fault()).words, "without an interval nothing falls due");
  await pilot.type("due-flights", "2");
  await pilot.type("due-days", "40");
  await pilot.sign();
  await pilot.on("machine");
  const row = pilot.page.locator('[data-test^="due-"][data-standing]').filter({ hasText: "Grease the hinge" });
  assert.equal(await row.getAttribute("data-standing"), "later");
  // RFC 5545 § 3.3.4, from memory: a date is written as YYYYMMDD.
  const calendar = (await pilot.download("calendar")).bytes.toString();
  const event = calendar.split("BEGIN:VEVENT").find((part) => part.includes("Grease the hinge"));
  assert.match(event, new RegExp(`^DTSTART;VALUE=DATE:${day(40).replaceAll("-", "")}\\r$`, "m"));

  await pilot.tap("log");
  await pilot.tap("log-other");
  await pilot.type("log-hours", "half");
  await pilot.tap("log-typed");
  assert.match((await pilot.fault()).words, /half/);
  await pilot.type("log-hours", "1,5");
  await pilot.type("log-flights", "3");
  await pilot.tap("log-typed");
  await pilot.tap("log-done");
  await pilot.on("machine");
  assert.equal(await row.getAttribute("data-standing"), "over");

  await row.click();
  await pilot.on("due");
  await pilot.tap("due-done-now");
  assert.equal(await pilot.of("due-done-hours").inputValue(), "43.1");
  await pilot.sign();
  await pilot.on("machine");
  assert.equal(await row.getAttribute("data-standing"), "later");
});

test("a component moves to another machine and takes its time along", async (t) => {
  const here = world(t);
  const one = registered(here);
  const other = registered(here, "Hill bramble");
  const { pilot } = await comesIn(t, here);
  await opens(pilot, one);
  await pilot.tap("component-new");
  await pilot.on("component-new");
  await pilot.choose("component-part", "propeller");
  for (const [field, text] of Object.entries({ name: "Blue blade", serial: "P-7", hours: "30", flights: "50" }))
    await pilot.type(`component-${field}`, text);
  await pilot.sign();
  await pilot.on("machine");
  const [blade] = await pilot.named("component-", "[data-fitted]");
  await flies(pilot);

  await pilot.tap(blade);
  await pilot.on("component");
  await pilot.tap(`move-${other}`);
  await pilot.sign();
  await pilot.on("machine");
  assert.equal(await pilot.attribute(blade, "data-fitted"), "false");
  await flies(pilot);
  await opens(pilot, other);
  assert.equal(await pilot.attribute(blade, "data-fitted"), "true");
  // It flew half an hour here, and not the half hour after it was taken off.
  assert.match(await pilot.says(blade), /30\.5 h.*51 flights/s);
});

async function flies(pilot) {
  await pilot.tap("log");
  await pilot.tap("minutes-30");
  await pilot.tap("log-done");
  await pilot.on("machine");
}
