// A pilot comes in front of the screens of a world.
import { browse } from "./browser.mjs";
import { Pilot } from "./pilot.mjs";
import { serve } from "./server.mjs";

export async function comesIn(t, here, looks) {
  const server = await serve(here);
  const context = await browse(t, looks);
  const pilot = new Pilot(await context.newPage());
  await pilot.page.goto(server.address);
  return { server, context, pilot };
}
