// Round the machine, point by point: what is on the screen, and what is on the disk.
import assert from "node:assert/strict";
import { steps } from "../help/database.mjs";
import { photograph } from "../help/picture.mjs";

/** Values that lie in the invented data sheet's bands, each with its unit. */
export const VALUES = {
  "fuel-on-board": ["8.5", null],
  // 1–3 mm; an inch is 25.4 mm (international yard and pound agreement, 1959), so 0.08 in are 2.03 mm.
  "throttle-free-travel": ["0.08", "in"],
  "propeller-tracking": ["2", "mm"],
  "idle-speed": ["2000", null],
  "full-throttle-speed": ["9000", null],
};

export async function startsTheList(pilot, machine) {
  await pilot.goTo("machine", machine);
  await pilot.tap("walk-before-flight");
  await pilot.on("walk-map");
  await pilot.tap("go-on");
  await pilot.on("point");
}

/** The screen moves on when the answer is on the disk, and not a moment before. */
export async function movesOnlyWhenDurable(pilot, here) {
  const first = pilot.point();
  let asked, release;
  const reached = new Promise((resolve) => (asked = resolve));
  const held = new Promise((resolve) => (release = resolve));
  await pilot.page.route("**/call", async (route) => {
    if (route.request().postDataJSON().call !== "answer") return route.continue();
    asked();
    await held;
    await route.continue();
  });
  const answered = pilot.answer();
  await reached;
  assert.equal(await pilot.page.locator(".answers").getAttribute("aria-busy"), "true");
  assert.equal(pilot.point(), first);
  assert.equal(steps(here).length, 0);
  release();
  await answered;
  assert.deepEqual(steps(here).map(({ step, point }) => [step, point]), [["answered", first]]);
  await pilot.page.unroute("**/call");
}

/** Answers point after point until one comes, each on the disk once the screen has moved on. */
export async function walks(pilot, here, list, until) {
  for (const { id } of list.slice(list.findIndex((point) => point.id === pilot.point()))) {
    if (id === until) break;
    assert.equal(pilot.point(), id, "points come in the order of the walk");
    const value = VALUES[id];
    await (value ? pilot.measure(...value) : pilot.answer());
    const last = steps(here).at(-1);
    assert.deepEqual([last.step, last.point], ["answered", id]);
  }
  assert.equal(pilot.point(), until);
}

/** Typed in another unit than the data sheet's, and held against the band while it is being typed. */
export async function measuresInInches(pilot) {
  assert.equal(pilot.point(), "throttle-free-travel");
  // 12.7 mm: more slack than 3 mm is to be watched; the nought typed first is less than 1 mm, unserviceable.
  await pilot.key("0.5", "in");
  await pilot.page.locator('[data-test="judged"][data-means="watch"]').waitFor();
  await pilot.key("0.08", "in");
  await pilot.page.locator('[data-test="judged"][data-means="serviceable"]').waitFor();
  await pilot.movesOn(() => pilot.tap("enter"));
}

/** A watch answer with a note and a picture. */
export async function findsAStain(pilot, here) {
  assert.equal(pilot.point(), "cylinder-base");
  await pilot.tap("say-more");
  await pilot.type("note", "Carburettor side, as wide as a thumb");
  await pilot.tap("note-keep");
  await pilot.of("noted").waitFor();
  assert.equal(await pilot.says("noted"), "Carburettor side, as wide as a thumb");
  await pilot.of("photo").setInputFiles({
    name: "base.jpg",
    mimeType: "image/jpeg",
    buffer: await photograph(pilot.page, 2400, 1200),
  });
  await pilot.page.locator(".photos .thumb").waitFor();
  await pilot.answer("watch");
  const kept = steps(here).filter(({ point }) => point === "cylinder-base").map(({ step }) => step);
  assert.deepEqual(new Set(kept), new Set(["noted", "pictured", "answered"]));
}

/** A slip of the thumb, taken back at one tap; the slip stays in the history. */
export async function takesBack(pilot, here) {
  const slipped = pilot.point();
  await pilot.answer("unserviceable");
  await pilot.movesOn(() => pilot.tap("step-back"));
  assert.equal(pilot.point(), slipped);
  assert.ok(!(await pilot.has("said")), "the answer no longer stands");
  await pilot.answer();
  assert.deepEqual(steps(here).slice(-3).map(({ step, point }) => [step, point]), [
    ["answered", slipped],
    ["withdrawn", slipped],
    ["answered", slipped],
  ]);
  return slipped;
}

/** Left for now: the walk goes on without it. */
export async function leaves(pilot, list) {
  const left = pilot.point();
  await pilot.movesOn(() => pilot.tap("leave"));
  assert.equal(pilot.point(), list[list.findIndex((point) => point.id === left) + 1].id);
  return left;
}

/** After an hour's interruption the last three points are asked again, and the screen says why. */
export async function interrupted(pilot, answered) {
  const banner = pilot.of("stepped-back");
  await banner.waitFor();
  assert.match(await banner.innerText(), /6[01] min/);
  for (const id of answered) {
    assert.equal(pilot.point(), id);
    assert.match(await pilot.says("said"), /Look again/);
    await pilot.answer();
  }
  assert.ok(!(await pilot.has("stepped-back")), "the banner goes when it is answered");
}

