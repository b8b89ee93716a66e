// First start, and a machine registered: what is refused is told, and nothing typed is lost.
import assert from "node:assert/strict";
import { PERSON, PIN } from "../help/pilot.mjs";
import { day } from "../help/world.mjs";

export async function firstStart(pilot) {
  await pilot.on("first");
  await pilot.type("name", PERSON);

  await pilot.type("pin", "12345");
  await pilot.type("pin-twice", "12345");
  await pilot.tap("begin");
  const weak = await pilot.fault();
  assert.equal(weak.kind, "pin-weak");
  assert.match(weak.words, /6 digits/);
  await kept(pilot, { name: PERSON, pin: "12345", "pin-twice": "12345" });

  await pilot.type("pin", PIN);
  await pilot.tap("begin");
  await pilot.page.locator('[data-kind="pins-differ"]').waitFor();
  await kept(pilot, { name: PERSON, pin: PIN, "pin-twice": "12345" });

  await pilot.type("pin-twice", PIN);
  await pilot.tap("begin");
  await pilot.on("machines");
  assert.ok(await pilot.has("empty-demo"), "an empty start offers the invented machines");
}

/** Registers a machine of the 125 class with a reserve packed a month ago; its id. */
export async function registers(pilot) {
  await pilot.tap("empty-add");
  await pilot.on("machine-form");
  await pilot.type("machine-name", "Field bramble");
  await pilot.tap("engine-bramble-125");
  await pilot.tap("part-reserve");
  await pilot.type("repacked", day(-30));
  await pilot.type("every-days", "365");
  await pilot.type("hours", "forty");
  await pilot.type("flights", "63");
  await pilot.type("pin", PIN);
  await pilot.tap("sign");
  assert.match((await pilot.fault()).words, /“forty” is not a number/);

  await pilot.type("hours", "41,6");
  await pilot.type("pin", "999999");
  await pilot.tap("sign");
  await pilot.page.locator('[data-kind="pin-wrong"]').waitFor();
  await kept(pilot, { "machine-name": "Field bramble", repacked: day(-30), "every-days": "365", hours: "41,6", flights: "63" });

  await pilot.type("pin", PIN);
  await pilot.tap("sign");
  await pilot.on("machine");
  const [machine] = await pilot.ask("machines");
  assert.deepEqual([machine.name, machine.hours, machine.flights], ["Field bramble", 41.6, 63]);
  return machine.id;
}

/** A machine that nobody walked round stays on the ground. */
export async function nobodyLooked(pilot) {
  await pilot.tap("to-verdict");
  await pilot.on("verdict");
  assert.equal(await pilot.of("verdict").getAttribute("data-state"), "grounded");
  assert.match(await pilot.says("reason-never-looked"), /Nobody has walked round it/);
  await pilot.tap("to-machine");
  await pilot.on("machine");
}

async function kept(pilot, fields) {
  for (const [field, typed] of Object.entries(fields)) assert.equal(await pilot.of(field).inputValue(), typed, field);
}
