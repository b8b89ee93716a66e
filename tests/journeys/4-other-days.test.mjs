// What else happens: trying out, settings, describing a machine anew, a list put aside, the program gone for a while.
import assert from "node:assert/strict";
import { test } from "node:test";
import { comesIn } from "./help/arrival.mjs";
import { away, steps } from "./help/database.mjs";
import { Pilot, PIN } from "./help/pilot.mjs";
import { registered, walked } from "./help/prepared.mjs";
import { serve } from "./help/server.mjs";
import { until, world } from "./help/world.mjs";
import { VALUES } from "./chapters/walking.mjs";

async function beginsAWalk(pilot, machine, points) {
  await pilot.goTo("machine", machine);
  await pilot.tap("walk-before-flight");
  await pilot.tap("go-on");
  await pilot.on("point");
  for (let n = 0; n < points; n++) await pilot.answer();
}

test("trying out: invented machines say so wherever they appear", async (t) => {
  const { pilot } = await comesIn(t, world(t));
  await pilot.begin();
  await pilot.tap("empty-demo");
  await pilot.page.locator("h2 a").waitFor();
  const cards = await pilot.ask("machines");
  assert.ok(cards.length >= 3);
  for (const { id } of cards) {
    assert.match(await pilot.of(`machine-${id}`).innerText(), /invented/);
    await pilot.goTo("machine", id);
    await pilot.on("machine");
    assert.match(await pilot.page.locator("body").innerText(), /invented, for trying out/);
    await pilot.tap("back");
    await pilot.on("machines");
  }
  const worst = ["grounded", "limited", "fit"];
  const shown = await pilot.page.locator('[data-test^="verdict-"], .machines [data-state]').evaluateAll((all) =>
    all.map((one) => one.dataset.state),
  );
  assert.deepEqual(shown, shown.toSorted((a, b) => worst.indexOf(a) - worst.indexOf(b)), "who needs a person stands first");
});

test("settings: what is no number is told; a longer patience holds; a new PIN signs and the old one doesn't", async (t) => {
  const here = world(t);
  const machine = registered(here);
  let { server, context, pilot } = await comesIn(t, here);
  await pilot.tap("to-settings");
  await pilot.on("settings");
  await pilot.type("patience", "ten");
  await pilot.tap("settings-keep");
  assert.match((await pilot.fault()).words, /“ten”/);
  await pilot.type("patience", "90");
  await pilot.tap("settings-keep");
  await pilot.page.getByText("Kept.").waitFor();
  await changesThePin(pilot, "314159");

  await beginsAWalk(pilot, machine, 3);
  await pilot.page.close();
  await server.stop();
  away(here, 60);
  server = await serve(here);
  pilot = new Pilot(await context.newPage());
  await pilot.page.goto(server.address);
  await pilot.tap("walk");
  await pilot.on("point");
  assert.ok(!(await pilot.has("stepped-back")), "an hour is within ninety minutes");

  await pilot.tap("to-map");
  await pilot.tap("to-summary");
  await pilot.tap("sign-with-pin");
  await pilot.signWith(PIN);
  assert.equal((await pilot.fault()).kind, "pin-wrong");
  await pilot.signWith("314159");
  await pilot.on("verdict");
});

async function changesThePin(pilot, fresh) {
  await pilot.tap("change-pin");
  const change = async (old, twice) => {
    await pilot.type("pin-old", old);
    await pilot.type("pin-new", fresh);
    await pilot.type("pin-twice", twice);
    await pilot.tap("pin-change");
  };
  await change(PIN, "314158");
  await pilot.page.locator('[data-kind="pins-differ"]').waitFor();
  await change("000111", fresh);
  await pilot.page.locator('[data-kind="pin-wrong"]').waitFor();
  assert.equal(await pilot.of("pin-new").inputValue(), fresh, "nothing typed is lost");
  await change(PIN, fresh);
  await pilot.page.getByText("The new PIN holds").waitFor();
}

test("a machine is described anew: its hours go on, and both descriptions stand in its timeline", async (t) => {
  const here = world(t);
  const machine = registered(here);
  const { pilot } = await comesIn(t, here);
  await pilot.goTo("machine", machine, "edit");
  await pilot.on("machine-form");
  assert.equal(await pilot.of("machine-name").inputValue(), "Field bramble");
  assert.equal(await pilot.of("every-days").inputValue(), "365");
  await pilot.type("hours", "43.2");
  await pilot.type("machine-note", "New exhaust springs");
  await pilot.type("pin", PIN);
  await pilot.tap("sign");
  await pilot.on("machine");
  assert.match(await pilot.page.locator(".over").innerText(), /43\.2 h/);
  assert.equal(await pilot.page.locator('.timeline [data-test^="entry-"]').count(), 2);
});

test("put aside: nothing is signed, and the next walk begins anew", async (t) => {
  const here = world(t);
  const machine = registered(here);
  const { pilot } = await comesIn(t, here);
  await beginsAWalk(pilot, machine, 3);
  await pilot.goTo("walk", machine, "before-flight", "summary");
  await pilot.tap("put-aside");
  await pilot.on("machine");
  assert.ok(!(await pilot.has("entry-inspection")));
  await pilot.tap("walk-before-flight");
  await pilot.tap("go-on");
  await pilot.on("point");
  assert.equal(pilot.point(), "weather");
  assert.equal(steps(here).length, 3, "what was answered is kept, unsigned");
});

test("a second flight: the short list stands on the day's full one", async (t) => {
  const here = world(t);
  const machine = registered(here);
  walked(here, machine);
  const { pilot } = await comesIn(t, here);
  await pilot.goTo("machine", machine);
  await pilot.tap("walk-second-flight");
  await pilot.tap("go-on");
  await pilot.on("point");
  await pilot.walkTo(null, VALUES);
  await pilot.on("summary");
  assert.equal(await pilot.of("preview").getAttribute("data-state"), "limited", "only the unconfirmed limit holds it back");
  await pilot.tap("sign-with-pin");
  await pilot.signWith(PIN);
  await pilot.on("verdict");
  assert.deepEqual(
    await pilot.page.locator('[data-test^="reason-"]').evaluateAll((all) => all.map((one) => one.dataset.test)),
    ["reason-limit-unconfirmed"],
  );
});

test("the program is gone in the middle of an answer: it is said, nothing is lost, and it goes on afterwards", async (t) => {
  const here = world(t);
  const machine = registered(here);
  let { server, context, pilot } = await comesIn(t, here);
  await beginsAWalk(pilot, machine, 2);
  await pilot.goTo("walk", machine, "before-flight", "point", "fuel-on-board");
  await pilot.of("value").waitFor();
  await pilot.key("8.5");
  await server.stop();

  await pilot.tap("enter");
  const fault = await pilot.fault();
  assert.equal(fault.kind, "unreachable");
  assert.match(fault.words, /start it again/);
  assert.equal(pilot.point(), "fuel-on-board");
  assert.equal(await pilot.of("value").inputValue(), "8.5");
  await pilot.tap("try-again");
  await pilot.page.locator('[data-kind="unreachable"]').waitFor();

  server = await serve(here, server.port);
  assert.equal(steps(here).length, 2, "what was answered is there, what wasn't isn't");
  // The new start has a new key: whoever opens the address that it prints is let in again.
  await (await context.newPage()).goto(server.address);
  await pilot.page.bringToFront();
  await pilot.tap("try-again");
  await until("moving on", () => pilot.point() !== "fuel-on-board");
  assert.deepEqual(steps(here).at(-1).given, { value: { value: 8.5, unit: "L" } });
});
