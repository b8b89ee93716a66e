// People of a school, each with a device of their own: a world, a browser window; what passes between them is text.
import { comesIn } from "./arrival.mjs";
import { Pilot, PIN } from "./pilot.mjs";
import { registered } from "./prepared.mjs";
import { serve } from "./server.mjs";
import { world } from "./world.mjs";

/** Invented, like everybody here. */
export const SCHOOL = "Skylark meadow";
export const ROOT = "Juno Larch";
export const MO = "Mo Tansy";
export const IDA = "Ida Sorrel";

/** Somebody with a device, at the machines. */
export async function arrives(t, name, looks) {
  const here = world(t);
  const { pilot, server, context } = await comesIn(t, here, looks);
  await pilot.begin(name);
  return Object.assign(pilot, { here, server, context, name });
}

/** A machine of theirs. */
export async function owns(pilot, machine) {
  const id = registered(pilot.here, machine, pilot.name);
  await again(pilot);
  return id;
}

/** The page as it is after something changed behind it. */
export async function again(pilot) {
  await pilot.page.reload();
  await pilot.page.locator("[data-screen]").waitFor();
}

/** The root founds the school, on the screen's own way. */
export async function founded(root, name = SCHOOL) {
  await root.ask("school-found", { name, pin: PIN });
}

/** Admitted by the root, and joined, both by the texts that the codes hold. */
export async function admitted(root, member, role, until = null) {
  const { text } = await member.ask("school-code");
  const answer = await root.ask("school-admit", { text, role, until, pin: PIN });
  await member.ask("school-join", { text: answer.text, pin: PIN });
}

/** All that one device has goes to another, as a file. */
export async function carried(from, to) {
  const { text } = await from.ask("export-all");
  return to.ask("import", { text });
}

/** Pastes a text where a code can be taken in. */
export async function takesIn(pilot, text) {
  await pilot.type("code-text", text);
  await pilot.tap("code-take");
}

/** The text of the code that stands on the screen. */
export async function shownCode(pilot) {
  await pilot.of("code").waitFor();
  return pilot.of("code-out").textContent();
}

/** Another device comes up in a world of its own, before anybody began on it. */
export async function newDevice(t, looks) {
  const here = world(t);
  const { pilot, server } = await comesIn(t, here, looks);
  return Object.assign(pilot, { here, server });
}

/** The device that was switched off and on again. */
export async function comesBack(pilot) {
  const server = await serve(pilot.here);
  const back = new Pilot(await pilot.context.newPage());
  await back.page.goto(server.address);
  return Object.assign(back, { here: pilot.here, server, context: pilot.context, name: pilot.name });
}
