// The screens of what is asked before a flight, of a person's choices, and of a point that can be read aloud.
import { burned, describesTheWing } from "./flying.mjs";
import { PIN } from "./pilot.mjs";
import { begun, registered } from "./prepared.mjs";
import { speaking } from "./speech.mjs";
import { until } from "./world.mjs";
import { place, point } from "./ways.mjs";

/** Two machines: of one nothing is known yet, of the other the wing and what earlier flights burned. */
export function populateFlight(here) {
  const [fresh, own] = [registered(here, "Shed bramble"), registered(here)];
  begun(here, own, {});
  return { fresh, own };
}

const flight = place("flight", "machine", "own", "flight");
const judged = (pilot, part, state) => pilot.page.locator(`[data-test="flight-part-${part}"][data-state="${state}"]`).waitFor();
const opened = async (pilot, part) => {
  if ((await pilot.attribute(`flight-open-${part}`, "aria-expanded")) === "false") await pilot.tap(`flight-open-${part}`);
};
/** The keys put away, where they are up. */
const away = async (pilot) => (await pilot.has("pad-away")) && pilot.tap("pad-away");

async function known(pilot, { own }) {
  if ((await pilot.ask("flight-form", { machine: own })).wing) return;
  await describesTheWing(pilot, own, PIN);
  await burned(pilot, own, [1.7, 1.9, 1.8, 1.75]);
}

export const FLIGHT = [
  ["flight-nothing-known", async (pilot, ids) => {
    await place("flight", "machine", "fresh", "flight")(pilot, ids);
    await opened(pilot, "load");
    await opened(pilot, "fuel");
    await away(pilot);
  }],
  ["flight", async (pilot, ids) => {
    await known(pilot, ids);
    await flight(pilot, ids);
    await opened(pilot, "load");
    await pilot.type("flight-pilot", "71");
    await pilot.of("flight-part-load").locator('[data-test="flight-fuel"]').fill("6.5");
    await judged(pilot, "load", "fit");
    await pilot.type("flight-minutes", "60");
    await pilot.type("flight-reserve", "20");
    await judged(pilot, "fuel", "fit");
    await pilot.type("flight-mean", "14");
    await pilot.type("flight-gust", "26");
    await pilot.type("flight-mostMean", "18");
    await pilot.type("flight-mostGust", "22");
    await judged(pilot, "wind", "grounded");
    await away(pilot);
  }],
  ["flight-pour", async (pilot, ids) => {
    await flight(pilot, ids);
    await opened(pilot, "mix");
    for (const [name, value] of [["inTank", "2"], ["addFuel", "12.5"], ["target", "50"], ["ratioInTank", "50"]]) await pilot.type(`flight-${name}`, value);
    await pilot.of("flight-pour").waitFor();
    await away(pilot);
    await pilot.of("flight-pour").scrollIntoViewIfNeeded();
  }],
  ["flight-air", async (pilot, ids) => {
    await flight(pilot, ids);
    await opened(pilot, "air");
    for (const [name, value] of [["elevation", "1240"], ["setting", "1013.25"], ["temperature", "31"], ["dew", "12"]]) await pilot.type(`flight-${name}`, value);
    await pilot.page.locator('[data-test="flight-part-air"] .flight-result .strong').waitFor();
    await away(pilot);
    await pilot.of("flight-temperature").scrollIntoViewIfNeeded();
  }],
  ["flight-keys", async (pilot, ids) => {
    await flight(pilot, ids);
    await opened(pilot, "air");
    await pilot.tap("flight-temperature");
  }],
  ["flight-lacking", async (pilot, ids) => {
    await flight(pilot, ids);
    await opened(pilot, "wind");
    await pilot.type("flight-mean", "");
    await away(pilot);
    await pilot.tap("flight-keep");
    await pilot.fault();
  }],
  ["summary-with-flight", place("summary", "walk", "own", "before-flight", "summary")],
  ["machine-load", async (pilot, ids) => {
    await place("machine-form", "machine", "own", "edit")(pilot, ids);
    if (!(await pilot.of("wing-low").isVisible())) await pilot.tap("machine-load");
  }],
  ["log-burned", async (pilot, ids) => {
    await place("log", "machine", "own", "log")(pilot, ids);
    if (!(await pilot.of("log-burned").isVisible())) await pilot.tap("log-burned-open");
  }],
  ["point-read-aloud", async (pilot, ids) => {
    await speaking(pilot.page, "en-GB");
    await pilot.page.reload();
    await point("own", "throttle-free-travel")(pilot, ids);
    await pilot.tap("read-aloud");
    await until("reading", async () => (await pilot.attribute("read-aloud", "aria-pressed")) === "true");
  }],
  ["settings-choices", async (pilot, ids) => {
    await place("settings", "settings")(pilot, ids);
    await pilot.of("settings-aloud").waitFor();
  }],
];
