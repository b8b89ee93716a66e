// Every screen, for everybody: nothing that axe finds wrong, nothing too small, too pale, cut off or out of reach.
import assert from "node:assert/strict";
import { test } from "node:test";
import { violations } from "./help/axe.mjs";
import { PHONE, WIDE } from "./help/browser.mjs";
import { pale } from "./help/contrast.mjs";
import { broken, covered, cut, moving, outOfSight, settled, sideways, tooSmall } from "./help/layout.mjs";
import { TOURS } from "./help/tour.mjs";

const NARROW = { width: 320, height: 640 };

async function forEverybody(page) {
  const wrong = [];
  const look = async (where, found) => wrong.push(...(await found).map((what) => `${where}: ${what}`));
  for (const [size, viewport] of Object.entries({ phone: PHONE, wide: WIDE })) {
    await page.setViewportSize(viewport);
    for (const colorScheme of ["light", "dark"]) {
      await page.emulateMedia({ colorScheme });
      await settled(page);
      await look(`${size}, ${colorScheme}`, violations(page));
      await look(`${size}, ${colorScheme}, pale`, pale(page));
    }
    await look(`${size}, out of sight`, outOfSight(page));
    await look(`${size}, too small`, tooSmall(page));
    await look(`${size}, covered`, covered(page));
  }
  await look("moving", moving(page));
  await page.setViewportSize(NARROW);
  await settled(page);
  for (const [what, found] of Object.entries({ sideways, cut, broken })) await look(`320 px, ${what}`, found(page));
  assert.deepEqual(wrong, []);
}

for (const [part, tour] of Object.entries(TOURS))
  test(`every screen of the ${part} is for everybody`, (t) => tour(t, forEverybody));
