// Every screen, for everybody: nothing that axe finds wrong, nothing too small, too pale, cut off or out of reach.
import assert from "node:assert/strict";
import { test } from "node:test";
import { violations } from "./help/axe.mjs";
import { browse, PHONE, WIDE } from "./help/browser.mjs";
import { broken, covered, cut, pale, settled, sideways, tooSmall } from "./help/layout.mjs";
import { Pilot } from "./help/pilot.mjs";
import { FIRST, populate, SCREENS } from "./help/screens.mjs";
import { serve } from "./help/server.mjs";
import { world } from "./help/world.mjs";

const NARROW = { width: 320, height: 640 };

test("every screen is for everybody", async (t) => {
  for (const [screens, fill] of [[FIRST, () => ({})], [SCREENS, populate]]) {
    const here = world(t);
    const ids = fill(here);
    const server = await serve(here);
    const pilot = new Pilot(await (await browse(t)).newPage());
    await pilot.page.goto(server.address);
    if (screens === SCREENS) await pilot.on("machines");
    for (const [name, show] of screens)
      await t.test(name, async () => {
        await pilot.page.setViewportSize(PHONE);
        await anew(pilot, screens);
        await show(pilot, ids);
        await isForEverybody(pilot.page);
      });
  }
});

/** Each screen is come to from elsewhere, so that nothing stays open from the one before. */
async function anew(pilot, screens) {
  if (screens !== SCREENS) return;
  await pilot.goTo("settings");
  await pilot.on("settings");
}

async function isForEverybody(page) {
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
    await look(`${size}, too small`, tooSmall(page));
    await look(`${size}, covered`, covered(page));
  }
  await page.setViewportSize(NARROW);
  await settled(page);
  await look("320 px, sideways", sideways(page));
  await look("320 px, cut", cut(page));
  await look("320 px, broken", broken(page));
  assert.deepEqual(wrong, []);
}

// Letters twice as large, set where a person sets them: in the browser.
test("every screen holds letters twice as large", async (t) => {
  for (const [screens, fill] of [[FIRST, () => ({})], [SCREENS, populate]]) {
    const here = world(t);
    const ids = fill(here);
    const server = await serve(here);
    const pilot = new Pilot(await (await browse(t, { letters: 2 })).newPage());
    await pilot.page.goto(server.address);
    if (screens === SCREENS) await pilot.on("machines");
    for (const [name, show] of screens)
      await t.test(name, async () => {
        await anew(pilot, screens);
        await show(pilot, ids);
        await settled(pilot.page);
        const wrong = [];
        for (const [what, found] of Object.entries({ sideways, cut, broken, covered }))
          wrong.push(...(await found(pilot.page)).map((where) => `${what}: ${where}`));
        assert.deepEqual(wrong, []);
      });
  }
});
