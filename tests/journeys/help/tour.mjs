// All screens, one after the other, each in a test of its own.
import { comesIn } from "./arrival.mjs";
import { PHONE } from "./browser.mjs";
import { FIRST, populate, SCREENS } from "./screens.mjs";
import { WORK } from "./screens-of-work.mjs";
import { world } from "./world.mjs";

/** Shows every screen on a phone and has it looked at. */
export async function tour(t, look, { letters = 1 } = {}) {
  const first = world(t);
  const { pilot } = await comesIn(t, first, { letters });
  for (const [name, show] of FIRST) await t.test(name, () => shown(pilot, show, {}).then(() => look(pilot.page, name)));

  const full = world(t);
  const ids = populate(full);
  const { pilot: owner } = await comesIn(t, full, { letters });
  await owner.on("machines");
  for (const [name, show] of [...SCREENS, ...WORK])
    await t.test(name, async () => {
      await leave(owner);
      await shown(owner, show, ids);
      await look(owner.page, name);
    });
}

async function shown(pilot, show, ids) {
  await pilot.page.setViewportSize(PHONE);
  await show(pilot, ids);
}

/** Each screen is come to from elsewhere, so that nothing stays open from the one before. */
async function leave(pilot) {
  await pilot.goTo("settings");
  await pilot.on("settings");
}
