// The inspection said back, signed, and what comes of it.
import assert from "node:assert/strict";
import { PERSON, PIN } from "../help/pilot.mjs";

/** Said back early: what nobody looked at yet is named, and would ground the machine. */
export async function saidBackEarly(pilot, machine, unseen) {
  await pilot.goTo("walk", machine, "before-flight", "summary");
  await unfolded(pilot);
  assert.equal(await pilot.of("preview").getAttribute("data-state"), "grounded");
  for (const point of unseen) assert.ok(await pilot.has(`left-${point}`), `${point} is named as not looked at`);
  await pilot.tap("back");
  await pilot.on("walk-map");
}

/** All looked at: what was found and what was hurried is said, and what signing would make of it. */
export async function saidBack(pilot, { found, unhurried }) {
  await unfolded(pilot);
  assert.equal(await pilot.of("preview").getAttribute("data-state"), "limited");
  assert.equal(await pilot.page.locator('[data-test^="left-"]').count(), 0);
  assert.equal(await pilot.page.locator('[data-test^="found-"]').count(), 1);
  assert.match(await pilot.says(`found-${found}`), /Old stain/);
  const hurried = pilot.page.locator('[data-test^="hurried-"]');
  assert.ok((await hurried.count()) > 0, "a program answers in a hurry, and that is said");
  for (const words of await hurried.allInnerTexts()) assert.match(words, /\S+.*look again/s);
  assert.ok(!(await pilot.has(`hurried-${unhurried}`)), "what was looked at for long isn't called hurried");
}

/** Long lists show their beginning until asked for all. */
async function unfolded(pilot) {
  await pilot.on("summary");
  for (const more of await pilot.of("more").all()) await more.click();
}

/** A tap doesn't sign; a held finger does, with the right PIN. */
export async function holdsAndSigns(pilot) {
  await pilot.tap("hold-to-sign");
  assert.ok(!(await pilot.has("sign-sheet")), "a tap doesn't sign");
  await pilot.holdToSign();
  await pilot.signWith("112233");
  assert.equal((await pilot.fault()).kind, "pin-wrong");
  assert.ok(await pilot.has("sign-sheet"));
  await pilot.signWith(PIN);
  await pilot.on("verdict");
}

/** Fit with limits, each reason named, and each a way to what caused it. */
export async function fitWithLimits(pilot) {
  assert.equal(await pilot.of("verdict").getAttribute("data-state"), "limited");
  assert.match(await pilot.says("reason-watch-item"), /Cylinder base.*Old stain/s);
  assert.match(await pilot.says("reason-limit-unconfirmed"), /Head nut torque/);
  assert.equal(await pilot.page.locator('[data-test^="reason-"]').count(), 2);
  await pilot.of("reason-watch-item").locator("a").first().click();
  await pilot.on("record");
  await pilot.of("finding-cylinder-base").waitFor();
}

/** On the machine's line of time, with its hours. */
export async function onTheTimeline(pilot, machine) {
  await pilot.goTo("machine", machine);
  await pilot.on("machine");
  const entry = pilot.of("entry-inspection");
  assert.match(await entry.innerText(), new RegExp(PERSON));
  assert.match(await entry.innerText(), /41\.6 h/);
  await entry.click();
  await pilot.on("record");
}
