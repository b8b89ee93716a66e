// All screens, one after the other, each in a test of its own: those of the walk, of the work, of a flight, of what is remembered, of a school and its server.
import { comesIn } from "./arrival.mjs";
import { PHONE } from "./browser.mjs";
import { Pilot } from "./pilot.mjs";
import { FIRST, populate, SCREENS } from "./screens.mjs";
import { FLIGHT, populateFlight } from "./screens-of-flight.mjs";
import { LOGS, populateLogs, populateSeason, SEASON } from "./screens-of-memory.mjs";
import { populateSchool, SCHOOL_SCREENS } from "./screens-of-school.mjs";
import { populateServer, SERVER_SCREENS } from "./screens-of-server.mjs";
import { populateWork, WORK } from "./screens-of-work.mjs";
import { world } from "./world.mjs";

/** Shows every screen of the walk on a phone and has it looked at. */
async function tourOfTheWalk(t, look, looks) {
  const { pilot } = await comesIn(t, world(t), looks);
  for (const [name, show] of FIRST) await t.test(name, () => shown(pilot, show, {}).then(() => look(pilot.page, name)));
  const here = world(t);
  await through(t, here, SCREENS, populate(here), look, looks);
}

/** The same with every screen of the work. */
async function tourOfTheWork(t, look, looks) {
  const here = world(t);
  await through(t, here, WORK, populateWork(here, world(t)), look, looks);
}

/** The same with every screen of what is asked before a flight. */
async function tourOfTheFlight(t, look, looks) {
  const here = world(t);
  await through(t, here, FLIGHT, populateFlight(here), look, looks);
}

/** The same with every screen of what is remembered. */
async function tourOfTheMemory(t, look, looks) {
  const here = world(t);
  await through(t, here, LOGS, populateLogs(here), look, looks);
  const there = world(t);
  await through(t, there, SEASON, populateSeason(there), look, looks);
}

/** The same with every screen of a school, each in front of the one who sees it so. */
const tourOfTheSchool = async (t, look, looks) => among(t, SCHOOL_SCREENS, await populateSchool(t, looks), look);

/** The same with every way in which a school may stand with its server. */
const tourOfTheServer = async (t, look, looks) => among(t, SERVER_SCREENS, await populateServer(t, looks), look);

async function among(t, screens, people, look) {
  for (const [name, show] of screens)
    await t.test(name, async () => {
      const everybody = Object.values(people).filter((one) => one instanceof Pilot);
      for (const pilot of everybody) await pilot.page.setViewportSize(PHONE);
      await Promise.all(everybody.filter((pilot) => pilot !== people.fresh).map(leave));
      const pilot = await show(people);
      await look(pilot.page, name);
    });
}

export const TOURS = { walk: tourOfTheWalk, work: tourOfTheWork, flight: tourOfTheFlight, memory: tourOfTheMemory, school: tourOfTheSchool, server: tourOfTheServer };

async function through(t, here, screens, ids, look, looks) {
  const { pilot } = await comesIn(t, here, looks);
  await pilot.on("machines");
  for (const [name, show] of screens)
    await t.test(name, async () => {
      await leave(pilot);
      await shown(pilot, show, ids);
      await look(pilot.page, name);
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
