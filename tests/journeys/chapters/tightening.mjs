// The torque bench: nut after nut as the drawing has them, a slip of the unit, a screen that went away.
import assert from "node:assert/strict";
import { until } from "../help/world.mjs";

/** Tightens what is left, or so many clicks of it, each nut moved as far as it says; the nuts in the order in
 * which they had their turn. */
export async function tightens(pilot, eighths, most = Infinity) {
  const order = [];
  for (let at = await turn(pilot); at && order.length < most; at = await pilot.nut()) {
    order.push(at.nut);
    await clicks(pilot, eighths);
  }
  return order;
}

/** The nut whose turn it is, once the screen shows one. */
const turn = (pilot) => until("a nut's turn", () => pilot.nut());

/** One click of the wrench. The screen takes no second one within a bounce of the finger. */
async function clicks(pilot, eighths) {
  const at = await pilot.nut();
  const moved = `eighths-${eighths[at.nut - 1]}`;
  if (await pilot.has(moved)) await pilot.tap(moved);
  await until(`the next after nut ${at.nut}`, async () => {
    await pilot.tap("clicked");
    const now = await pilot.nut();
    return now?.nut !== at.nut || now.setting !== at.setting;
  });
}

/** The four nuts of the head, numbered clockwise: from each across to the one opposite, round after round, and
 * at last once more in turn to hear them all click (common practice, from memory). */
export function goesAcross(order) {
  assert.ok(order.length >= 12, "in stages");
  const across = order.slice(0, -4);
  for (const [n, nut] of across.entries()) assert.equal(nut, [1, 3, 2, 4][n % 4], `turn ${n + 1} of ${order}`);
  assert.deepEqual(order.slice(-4), [1, 2, 3, 4]);
}

/** Half-way the phone's page goes away, and a nut was tapped that hadn't clicked: it goes on at the same nut. */
export async function goesOnAfterwards(pilot, eighths) {
  const order = await tightens(pilot, eighths, 3);
  const at = await pilot.nut();
  await clicks(pilot, eighths);
  await pilot.tap("nut-back");
  assert.deepEqual(await pilot.nut(), at);
  await pilot.page.reload();
  assert.deepEqual(await turn(pilot), at, "the same nut, at the same setting");
  return order;
}

/** 127 lbf·in read as lbf·ft is twelve times too much: told, and nothing that was tapped or typed is lost. */
export async function mistakesTheUnit(pilot) {
  const moved = await pilot.says("moved");
  await pilot.type("reading", "127");
  await pilot.choose("reading-unit", "lbf.ft");
  await pilot.tap("torque-done");
  const fault = await pilot.fault();
  assert.equal(fault.kind, "torque-slip");
  assert.match(fault.words, /lbf·in/);
  assert.equal(await pilot.says("moved"), moved);
  assert.equal(await pilot.of("reading").inputValue(), "127");
  await pilot.choose("reading-unit", "lbf.in");
  await pilot.movesOn(() => pilot.tap("torque-done"));
}
