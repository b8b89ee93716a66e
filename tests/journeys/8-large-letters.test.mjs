// Every screen with letters twice as large, set where a person sets them: in the browser.
import assert from "node:assert/strict";
import { test } from "node:test";
import { broken, covered, cut, settled, sideways } from "./help/layout.mjs";
import { TOURS } from "./help/tour.mjs";

async function holds(page) {
  await settled(page);
  const wrong = [];
  for (const [what, found] of Object.entries({ sideways, cut, broken, covered }))
    wrong.push(...(await found(page)).map((where) => `${what}: ${where}`));
  assert.deepEqual(wrong, []);
}

for (const [part, tour] of Object.entries(TOURS))
  test(`every screen of the ${part} holds letters twice as large`, (t) => tour(t, holds, { letters: 2 }));
