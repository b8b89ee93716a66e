// The screens in the person's language and units, numbers as it writes them, and points read aloud.
import assert from "node:assert/strict";
import { test } from "node:test";
import { comesIn } from "./help/arrival.mjs";
import { browse, WIDE } from "./help/browser.mjs";
import { Pilot, PIN } from "./help/pilot.mjs";
import { registered } from "./help/prepared.mjs";
import { serve } from "./help/server.mjs";
import { ends, queued, said, saidIn, speaking } from "./help/speech.mjs";
import { opens, schoolWithBoard, signsIn } from "./help/wall.mjs";
import { until, world } from "./help/world.mjs";

const lang = (page) => page.evaluate(() => document.documentElement.lang);
const title = async (page) => (await page.locator("h1").innerText()).trim();

/** A page in front of a world, in a browser that its person set up so. */
async function inFrontOf(t, here, { voices = [], ...looks } = {}) {
  const server = await serve(here);
  const context = await browse(t, looks);
  await speaking(context, ...voices);
  const pilot = new Pilot(await context.newPage());
  await pilot.page.goto(server.address);
  return pilot;
}

test("the first start speaks the browser's language, faults too; another is chosen there, and what was typed stays", async (t) => {
  const pilot = await inFrontOf(t, world(t), { locale: "de-AT" });
  await pilot.on("first");
  assert.equal(await lang(pilot.page), "de");
  const german = await title(pilot.page);
  await pilot.type("name", "Juno Lärche");
  await pilot.type("pin", "1");
  await pilot.type("pin-twice", "1");
  await pilot.tap("begin");
  const { words } = await pilot.fault();
  assert.match(words, /PIN/);
  assert.doesNotMatch(words, /digits/, "said in German, not in English");
  await pilot.choose("language", "es");
  await until("Spanish", async () => (await lang(pilot.page)) === "es");
  assert.notEqual(await title(pilot.page), german);
  assert.equal(await pilot.of("name").inputValue(), "Juno Lärche");
  await pilot.type("pin", PIN);
  await pilot.type("pin-twice", PIN);
  await pilot.tap("begin");
  await pilot.on("machines");
  await pilot.page.reload();
  await pilot.on("machines");
  assert.equal(await lang(pilot.page), "es", "kept");
});

test("a browser in a language without words gets English", async (t) => {
  const pilot = await inFrontOf(t, world(t), { locale: "is-IS" });
  await pilot.on("first");
  assert.equal(await lang(pilot.page), "en");
});

test("settings name each language in itself; a choice changes every word at once, and loses nothing typed", async (t) => {
  const here = world(t);
  const machine = registered(here);
  const { pilot } = await comesIn(t, here);
  await pilot.goTo("machine", machine, "edit");
  await pilot.on("machine-form");
  await pilot.type("hours", "42.7");
  await pilot.goTo("settings");
  await pilot.on("settings");
  const named = await pilot.of("language").locator("option").allInnerTexts();
  assert.deepEqual(named.sort(), ["Deutsch", "English", "Español", "Français"]);
  await pilot.type("patience", "12");
  const english = new Set(await words(pilot.page));
  await pilot.choose("language", "de");
  await until("German", async () => (await lang(pilot.page)) === "de");
  assert.equal(await pilot.of("patience").inputValue(), "12");
  const cautions = (await pilot.ask("start")).cautions;
  for (const caution of cautions) await pilot.page.getByText(caution).first().waitFor();
  assert.ok((await words(pilot.page)).some((one) => !english.has(one)));
  await pilot.goTo("machine", machine, "edit");
  await pilot.on("machine-form");
  assert.equal(await pilot.of("hours").inputValue(), "42.7", "as it was typed");
  await pilot.goTo("machine", machine);
  await pilot.on("machine");
  assert.match(await pilot.page.locator(".over").innerText(), /41,6 h/, "with a decimal comma");
});

/** Headings and labels on the screen. */
const words = (page) => page.locator("h1, h2, label, legend, button").allInnerTexts();

test("a decimal comma is shown, typed on the keys, and taken; the unit is the person's where it is of the kind", async (t) => {
  const here = world(t);
  const machine = registered(here);
  const { pilot } = await comesIn(t, here);
  await pilot.goTo("settings");
  await pilot.choose("language", "fr");
  await until("French", async () => (await pilot.ask("start")).language === "fr");
  await pilot.goTo("walk", machine, "before-flight", "point", "throttle-free-travel");
  await pilot.on("point");
  assert.equal(await pilot.of("unit").inputValue(), "mm", "a height's unit is none for play at a lever");
  await pilot.key("2,4");
  assert.equal(await pilot.of("value").inputValue(), "2,4");
  await pilot.page.locator('[data-test="judged"][data-means="serviceable"]').waitFor();
  await pilot.movesOn(() => pilot.tap("enter"));
  await pilot.goTo("walk", machine, "before-flight", "point", "throttle-free-travel");
  assert.match(await pilot.says("said"), /2,4\s?mm/);
  assert.equal(await pilot.of("value").inputValue(), "2,4");

  // A limit of torque begins with the person's unit where nothing is stated yet, and is stated in both where it is.
  await pilot.goTo("settings");
  await pilot.choose("unit-torque", "N.m");
  await until("newton metres", async () => (await pilot.ask("start")).units.torque === "N.m");
  const limit = (await pilot.ask("machine", { id: machine })).limits.find(({ band }) => band === "head-nut-torque");
  assert.match(limit.value, /lbf·in \(.*N·m\)/, "the maker's own first");
});

test("a point is read aloud: the caution first, numbers with their units in words; an answer hushes it at once", async (t) => {
  const here = world(t);
  const machine = registered(here);
  const pilot = await inFrontOf(t, here, { voices: ["en-GB", "de-DE"] });
  await pilot.on("machines");
  const { stations } = await pilot.ask("walk", { machine, occasion: "before-flight" });
  const points = stations.flatMap((station) => station.points);
  const cautioned = points.find(({ caution, ask }) => caution && ask.by === "words");
  const at = async (point) => {
    await pilot.goTo("walk", machine, "before-flight", "point", point.id);
    await pilot.page.locator("h1", { hasText: point.title }).waitFor();
  };
  await at(cautioned);
  assert.deepEqual(await said(pilot.page), [], "not before somebody wants it");
  await pilot.tap("read-aloud");
  const heard = await said(pilot.page);
  assert.deepEqual(heard.slice(0, 2), [cautioned.caution, cautioned.title]);
  assert.ok(heard[2].endsWith(cautioned.good) && heard[3].endsWith(cautioned.bad));
  assert.equal(await pilot.attribute("read-aloud", "aria-pressed"), "true");
  // Nothing is said over the caution: it is at its end before the title begins.
  assert.equal((await queued(pilot.page))[0], cautioned.caution);
  await ends(pilot.page);
  assert.equal((await queued(pilot.page))[0], cautioned.title);
  await pilot.answer();
  assert.deepEqual(await queued(pilot.page), [], "hushed by the answer");

  // Left unheard it is quiet, too.
  await at(cautioned);
  await pilot.tap("read-aloud");
  await pilot.tap("to-map");
  await pilot.on("walk-map");
  assert.deepEqual(await queued(pilot.page), []);

  await said(pilot.page);
  await at(points.find(({ id }) => id === "throttle-free-travel"));
  await pilot.tap("read-aloud");
  assert.match((await said(pilot.page)).at(-1), /1 to 3 millimetres/);

  // Once it is set, it reads by itself, in the language in use.
  await pilot.goTo("settings");
  await pilot.of("settings-aloud").check();
  await until("reading aloud to be kept", async () => (await pilot.ask("start")).read_aloud);
  await pilot.choose("language", "de");
  await until("German", async () => (await lang(pilot.page)) === "de");
  await pilot.goTo("walk", machine, "before-flight", "point", cautioned.id);
  await pilot.on("point");
  await until("reading", async () => (await queued(pilot.page)).length > 0);
  assert.equal(await saidIn(pilot.page), "de-DE");
  const german = (await pilot.ask("walk", { machine, occasion: "before-flight" })).stations.flatMap(({ points }) => points);
  assert.equal((await queued(pilot.page))[0], german.find(({ id }) => id === cautioned.id).caution);
  await pilot.goTo("walk", machine, "before-flight", "point", "throttle-free-travel");
  await until("the unit in German", async () => /1 bis 3 Millimeter/.test((await queued(pilot.page)).at(-1) ?? ""));
});

test("without a voice for the language nothing offers to read, and settings say so", async (t) => {
  const here = world(t);
  const machine = registered(here);
  const pilot = await inFrontOf(t, here, { voices: ["ja-JP"] });
  await pilot.goTo("settings");
  await pilot.on("settings");
  assert.match(await pilot.says("no-voice"), /English/);
  assert.ok(!(await pilot.has("settings-aloud")));
  await pilot.goTo("walk", machine, "before-flight", "point", "cylinder-base");
  await pilot.on("point");
  assert.ok(!(await pilot.has("read-aloud")));
});

test("the board speaks the browser's language, what its server says too; another is chosen on it and kept", async (t) => {
  const { root, machines, server } = await schoolWithBoard(t);
  const wall = await opens(t, server, { viewport: WIDE, locale: "de-CH" });
  await until("German", async () => (await lang(wall.page)) === "de");
  await signsIn(wall, root);
  await wall.of(`open-${machines.torn}`).click();
  await wall.on("machine");
  const german = await wall.of("sheet").innerText();
  await wall.close();
  await wall.of("search").fill("bramble");
  await wall.of("language").selectOption("fr");
  await until("French", async () => (await lang(wall.page)) === "fr");
  assert.equal(await wall.of("search").inputValue(), "bramble");
  await wall.of(`open-${machines.torn}`).click();
  await wall.on("machine");
  const reasons = async () => (await wall.page.locator('[data-test^="reason-"]').first().innerText()).trim();
  assert.ok(!german.includes(await reasons()), "the verdict's reasons, too, are said in French");
  await wall.page.reload();
  await wall.of("live").waitFor();
  assert.equal(await lang(wall.page), "fr", "kept");
});
