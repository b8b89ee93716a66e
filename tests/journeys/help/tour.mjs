// All screens, one after the other, each in a test of its own.
import { browse, PHONE } from "./browser.mjs";
import { Pilot } from "./pilot.mjs";
import { FIRST, populate, SCREENS } from "./screens.mjs";
import { WORK } from "./screens-of-work.mjs";
import { serve } from "./server.mjs";
import { world } from "./world.mjs";

/** Shows every screen on a phone and has it looked at. */
export async function tour(t, look, { letters = 1 } = {}) {
  const first = world(t);
  const pilot = await comesIn(t, first, letters);
  for (const [name, show] of FIRST) await t.test(name, () => shown(pilot, show, {}).then(() => look(pilot.page, name)));

  const full = world(t);
  const ids = populate(full);
  const owner = await comesIn(t, full, letters);
  await owner.on("machines");
  for (const [name, show] of [...SCREENS, ...WORK])
    await t.test(name, async () => {
      await leave(owner);
      await shown(owner, show, ids);
      await look(owner.page, name);
    });
}

async function comesIn(t, here, letters) {
  const server = await serve(here);
  const pilot = new Pilot(await (await browse(t, { letters })).newPage());
  await pilot.page.goto(server.address);
  return pilot;
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
