// The screens of what is remembered, in every state that looks different, and the way to them.
import { asFile, engineLog, logged, rising } from "./engine-log.mjs";
import { PERSON } from "./pilot.mjs";
import { registered, signed } from "./prepared.mjs";
import { place } from "./ways.mjs";

/** A machine whose head will run hotter and hotter, and one of which nothing is known. */
export const populateLogs = (here) => ({ own: registered(here), empty: registered(here, "Winter bramble") });

/** An invented school with its season; no machine of one's own, with which its machines wouldn't be reckoned. */
export function populateSeason(here) {
  signed(here, "demo", "--school", "--signatory", PERSON);
  return { demo: here.cli("machine", "list").said.find(({ name }) => name === "Hedge 1").id };
}

const chooses = (name, file) => async (pilot, { own }) => {
  await pilot.goTo("machine", own, "readings");
  await pilot.page.locator('[data-screen^="readings"]:not([data-screen$="-waiting"])').waitFor();
  if (await pilot.has("readings-other")) await pilot.tap("readings-other");
  await pilot.of("readings-file").setInputFiles(file);
  await pilot.on(name);
};

const HEADINGS = ["Time", "Head", "U"];
const guessed = asFile("morning.csv", engineLog(184, { headings: HEADINGS }));

/** Logs that only the first of these screens takes in. */
const hotter = async (pilot, { own }) => {
  const { timeline } = await pilot.ask("machine", { id: own });
  if (!timeline.some(({ kind }) => kind === "readings-taken")) await logged(pilot, own, rising(12));
};

const drawn = (pilot) => pilot.page.locator(".chart canvas").first().waitFor();

export const LOGS = [
  ["machine-drifts", async (pilot, ids) => {
    await hotter(pilot, ids);
    await place("machine", "machine", "own")(pilot, ids);
    await pilot.of("drifts-peak-cht").scrollIntoViewIfNeeded();
  }],
  ["machine-no-drifts", async (pilot, ids) => {
    await place("machine", "machine", "empty")(pilot, ids);
    await pilot.of("drifts-none").scrollIntoViewIfNeeded();
  }],
  ["trends", async (pilot, ids) => {
    await place("trends", "machine", "own", "trends")(pilot, ids);
    await drawn(pilot);
  }],
  ["trends-none", place("trends", "machine", "empty", "trends")],
  ["readings", place("readings", "machine", "empty", "readings")],
  ["readings-guessed", chooses("readings-columns", guessed)],
  ["readings-told", async (pilot, ids) => {
    await chooses("readings-columns", asFile("hot.csv", engineLog(184.5, { outside: 21 })))(pilot, ids);
    await pilot.tap("mapping-confirm");
    await pilot.on("readings-told");
    await pilot.sign("000000");
    await pilot.fault();
  }],
  ["readings-remembered", chooses("readings-columns", asFile("evening.csv", engineLog(185, { outside: 12 })))],
  ["readings-taken", chooses("readings-taken", asFile("copy.csv", engineLog(rising(12)[0][1], { outside: 15 })))],
  ["fleet-none", place("fleet", "fleet")],
];

export const SEASON = [
  ["trends-season", async (pilot, ids) => {
    await place("trends", "machine", "demo", "trends")(pilot, ids);
    await drawn(pilot);
  }],
  ["trends-open", async (pilot, ids) => {
    await place("trends", "machine", "demo", "trends")(pilot, ids);
    await drawn(pilot);
    await pilot.tap("table-open-peak-cht");
    await pilot.of("table-peak-cht").waitFor();
    await pilot.tap("chart-key");
  }],
  ["trends-key", async (pilot, ids) => {
    await place("trends", "machine", "demo", "trends")(pilot, ids);
    await drawn(pilot);
    await pilot.tap("chart-key");
    await pilot.of("chart-key").scrollIntoViewIfNeeded();
  }],
  ["fleet", place("fleet", "fleet")],
  ["life", async (pilot, ids) => {
    await place("life", "fleet", await oftenest(pilot))(pilot, ids);
    await drawn(pilot);
  }],
  ["life-asked", async (pilot, ids) => {
    await place("life", "fleet", await oftenest(pilot))(pilot, ids);
    await pilot.tap("life-ask");
    await pilot.type("life-in-force", "25");
    await pilot.of("intervals").waitFor();
    await pilot.tap("life-table-open");
  }],
  ["life-too-little", async (pilot, ids) => {
    const parts = await pilot.ask("life-parts");
    const least = parts.reduce((one, part) => (part.failed < one.failed ? part : one));
    await place("life", "fleet", least.id)(pilot, ids);
  }],
  ["looking", place("looking", "looking")],
  ["worth", place("worth", "worth")],
];

/** The part that was found failed most often. */
async function oftenest(pilot) {
  const parts = await pilot.ask("life-parts");
  return parts.reduce((most, part) => (part.failed > most.failed ? part : most)).id;
}
