// A wet cylinder base before the second flight: grounded, put right, a limit confirmed from the manual, fit.
import assert from "node:assert/strict";
import { test } from "node:test";
import { browse } from "./help/browser.mjs";
import { Pilot, PIN } from "./help/pilot.mjs";
import { registered, walked } from "./help/prepared.mjs";
import { serve } from "./help/server.mjs";
import { world } from "./help/world.mjs";
import { VALUES } from "./chapters/walking.mjs";

test("a wet cylinder base grounds the machine until it is put right; a confirmed limit no longer holds it back", async (t) => {
  const here = world(t);
  const machine = registered(here);
  walked(here, machine, { "cylinder-base": "old-stain" });
  const server = await serve(here);
  const pilot = new Pilot(await (await browse(t)).newPage());
  await pilot.page.goto(server.address);

  await walksTheSecondList(pilot);
  await signsWithoutHolding(pilot);
  await isGrounded(pilot);
  await putsItRight(pilot, machine);
  await confirmsTheTorque(pilot);
  await isIn(pilot, "fit");
  await saysItOtherwise(pilot);
  await isIn(pilot, "limited");
  assert.equal(here.cli("verdict", machine).said.state, "limited", "the command line says the same");
});

async function isIn(pilot, state) {
  await pilot.on("machine");
  await pilot.page.locator(`[data-test="to-verdict"][data-state="${state}"]`).waitFor();
}

async function walksTheSecondList(pilot) {
  await pilot.on("machines");
  await pilot.page.locator("h2 a").click();
  await isIn(pilot, "limited");
  await pilot.tap("walk-second-flight");
  await pilot.tap("go-on");
  await pilot.on("point");
  await pilot.walkTo("cylinder-base", VALUES);
  assert.match(await pilot.says("last-time"), /Last time.*Old stain.*41\.6 h/s);
  await pilot.answer("unserviceable");
  await pilot.walkTo(null, VALUES);
}

async function signsWithoutHolding(pilot) {
  await pilot.on("summary");
  assert.equal(await pilot.of("preview").getAttribute("data-state"), "grounded");
  await pilot.tap("sign-with-pin");
  await pilot.tap("sign-not-yet");
  await pilot.gone("sign-sheet");
  await pilot.tap("sign-with-pin");
  await pilot.signWith(PIN);
}

async function isGrounded(pilot) {
  await pilot.on("verdict");
  assert.equal(await pilot.of("verdict").getAttribute("data-state"), "grounded");
  const defect = pilot.of("reason-open-defect");
  assert.match(await defect.innerText(), /Cylinder base.*Wet/s);
  await defect.locator("a").first().click();
  await pilot.on("record");
  assert.match(await pilot.says("finding-cylinder-base"), /unserviceable/);
  await pilot.page.goBack();
  await pilot.on("verdict");
  await pilot.tap("to-machine");
}

async function putsItRight(pilot, machine) {
  await isIn(pilot, "grounded");
  await pilot.tap("put-right-cylinder-base");
  await pilot.on("put-right");
  await pilot.type("pin", PIN);
  await pilot.tap("sign");
  assert.ok((await pilot.fault()).words, "what was done must be said");
  await pilot.type("how", "New base gasket, nuts in two stages as the manual says, run up, dry");
  await pilot.type("pin", PIN);
  await pilot.tap("sign");
  await isIn(pilot, "limited");
  assert.match(await pilot.says("entry-defect-rectified"), /New base gasket/);
  assert.deepEqual((await pilot.ask("machine", { id: machine })).open, []);
}

async function confirmsTheTorque(pilot) {
  await pilot.tap("limit-head-nut-torque");
  await pilot.on("limit");
  await pilot.of("unit").selectOption("N.m");
  await pilot.type("low", "14,1");
  await pilot.type("high", "14,7");
  await pilot.type("document", "Workshop manual of the Bramble 125, issue 3 (invented)");
  await pilot.type("pin", PIN);
  await pilot.tap("sign");
  assert.ok((await pilot.fault()).words, "a limit without a page is not confirmed");
  assert.equal(await pilot.of("low").inputValue(), "14,1");
  await pilot.type("page", "41");
  await pilot.type("pin", PIN);
  await pilot.tap("sign");
  await pilot.on("machine");
  const row = pilot.page.locator('[data-test="limit-head-nut-torque"][data-confirmed="true"]');
  assert.match(await row.innerText(), /14\.1–14\.7 N·m.*issue 3.*41/s);
}

/** A later word on a signed finding is a record of its own; what was signed stays. */
async function saysItOtherwise(pilot) {
  const look = pilot.of("entry-inspection").first();
  const record = await look.getAttribute("data-record");
  await look.click();
  await pilot.on("record");
  const payload = await pilot.of("payload").textContent();
  await pilot.tap("otherwise-exhaust-springs");
  await pilot.on("otherwise");
  await pilot.tap("choice-worn");
  await pilot.type("reason", "Seen again at home in better light");
  await pilot.type("pin", PIN);
  await pilot.tap("sign");
  await pilot.on("record");
  assert.match(await pilot.says("finding-exhaust-springs"), /better light/);
  assert.equal(await pilot.of("digest").innerText(), record);
  assert.equal(await pilot.of("payload").textContent(), payload);
  await pilot.tap("back");
}
