// What is remembered: engine logs taken in, trends and their charts, how long parts last, how people look.
import assert from "node:assert/strict";
import { test } from "node:test";
import { comesIn } from "./help/arrival.mjs";
import { WIDE } from "./help/browser.mjs";
import { painted } from "./help/chart.mjs";
import { asFile, engineLog, logged, rising } from "./help/engine-log.mjs";
import { Keyboard } from "./help/keyboard.mjs";
import { PERSON, PIN } from "./help/pilot.mjs";
import { registered, signed } from "./help/prepared.mjs";
import { opens, schoolWithBoard, signsIn } from "./help/wall.mjs";
import { until, world } from "./help/world.mjs";

async function withMachine(t) {
  const here = world(t);
  const machine = registered(here);
  const { pilot } = await comesIn(t, here);
  await pilot.on("machines");
  return { here, machine, pilot };
}

const choosesLog = (pilot, file) => pilot.of("readings-file").setInputFiles(file);

test("an engine log: guessed, corrected, signed; the next one is remembered, the same one is known again", async (t) => {
  const { machine, pilot } = await withMachine(t);
  await pilot.tap(`open-${machine}`);
  await pilot.on("machine");
  assert.match(await pilot.says("drifts-none"), /No reading/);
  await pilot.tap("to-readings");
  await pilot.on("readings");

  // As an older instrument writes it: no UTF-8, and a heading that says nothing.
  const headings = ["Time", "Kopf °C", "U"];
  const text = engineLog(187.5, { headings });
  await choosesLog(pilot, asFile("run.csv", text, "latin1"));
  await pilot.on("readings-columns");
  assert.equal(await pilot.attribute("mapping", "data-remembered"), "false");
  assert.match(await pilot.says("mapping"), /guess/);
  assert.match(await pilot.says("column-1"), /Kopf °C/, "Windows-1252 is read as what it is");
  assert.match(await pilot.says("column-1"), /60,0/, "samples as the file writes them");
  await pilot.choose("holds-0", "time");
  await pilot.choose("time-form", "seconds");
  await pilot.choose("holds-1", "cht");
  await pilot.choose("unit-1", "Cel");
  await pilot.choose("holds-2", "speed");
  assert.equal(await pilot.attribute("column-2", "data-holds"), "speed");
  await pilot.tap("mapping-confirm");
  await pilot.on("readings-told");
  assert.match(await pilot.says("figure-peak-cht"), /187\.5/);
  assert.match(await pilot.says("readings-rows"), /600/);

  await pilot.type("readings-hours", "40.5");
  await pilot.type("readings-outside", "15");
  await pilot.sign("000000");
  assert.equal((await pilot.fault()).kind, "pin-wrong");
  assert.equal(await pilot.of("readings-hours").inputValue(), "40.5", "nothing typed is lost");
  await pilot.type("readings-hours", "forty");
  await pilot.sign();
  assert.equal((await pilot.fault()).kind, "no-number");
  await pilot.type("readings-hours", "40.5");
  await pilot.sign();
  await pilot.on("trends");
  assert.match(await pilot.says("reading-peak-cht"), /187\.5.*40\.5/s);
  assert.match(await pilot.says("says-peak-cht"), /Too little to say/);

  // The next file of that instrument: one look, one tap.
  await pilot.tap("to-readings");
  await choosesLog(pilot, asFile("next.csv", engineLog(186, { headings }), "latin1"));
  await pilot.on("readings-columns");
  assert.equal(await pilot.attribute("mapping", "data-remembered"), "true");
  assert.equal(await pilot.of("holds-0").count(), 0, "nothing is asked again");
  assert.match(await pilot.says("column-said-1"), /head temperature.*°C/i);
  await pilot.tap("mapping-confirm");
  await pilot.on("readings-told");
  await pilot.tap("readings-other");

  await choosesLog(pilot, asFile("copy of run.csv", text, "latin1"));
  await pilot.on("readings-taken");
  await pilot.tap("taken-record");
  await pilot.on("record");
  assert.match(await pilot.page.locator("main").innerText(), /run\.csv/);
});

test("what is no log is said to be none, and the way on stays open", async (t) => {
  const { machine, pilot } = await withMachine(t);
  await pilot.goTo("machine", machine, "readings");
  await pilot.on("readings");
  await choosesLog(pilot, asFile("empty.csv", ""));
  assert.ok((await pilot.fault()).words.length > 20);
  await choosesLog(pilot, asFile("run.csv", engineLog(180)));
  await pilot.on("readings-columns");
  // Without a time nothing can be read; all that was chosen stays.
  await pilot.choose("holds-0", "");
  await pilot.tap("mapping-confirm");
  await pilot.fault();
  assert.equal(await pilot.attribute("column-1", "data-holds"), "cht");
  await pilot.choose("holds-0", "time");
  await pilot.tap("mapping-confirm");
  await pilot.on("readings-told");
});

// Readings that lie on a line: its slope is that of Theil and Sen, and it meets the limit where a ruler does. The
// climb's limit of the invented 125 is 410 °F, 210 °C: from 160 °C at 6 h by half a degree an hour, at 106 h.
test("a trend: said on the machine's page, drawn, walked by keyboard, each reading leads to its record", async (t) => {
  const { machine, pilot } = await withMachine(t);
  await logged(pilot, machine, rising(12));
  const trends = await pilot.ask("trends", { machine });
  const cht = trends.find(({ id }) => id === "peak-cht");
  assert.equal(cht.direction, "rising");
  assert.ok(Math.abs(cht.line.per_100_hours - 50) < 1e-6, `${cht.line.per_100_hours}`);
  assert.ok(Math.abs(cht.reaches.at - 106) < 0.5, `${cht.reaches.at}`);

  await pilot.goTo("machine", machine);
  await pilot.on("machine");
  assert.ok((await pilot.says("drifts-peak-cht")).includes(cht.sentences[0]));
  await pilot.tap("drifts-peak-cht");
  await pilot.on("trends");
  assert.equal(await pilot.attribute("trend-peak-cht", "data-drifts"), "true");
  const shown = await pilot.says("trend-peak-cht");
  for (const sentence of cht.sentences) assert.ok(shown.includes(sentence), sentence);
  assert.ok((await pilot.says("band-peak-cht")).includes(cht.band.source), "where the band is written");
  await until("the line to be painted", async () => (await painted(pilot.page, "chart-peak-cht", "--paint")) > 200);
  const limit = await painted(pilot.page, "chart-peak-cht", "--stop");
  assert.ok(limit > 100, "the limit is drawn");

  // Idle speed was the same in every run: no line then, only its readings and the sentence.
  assert.equal(await pilot.attribute("trend-log-idle-speed", "data-direction"), "too-little");
  await until("readings to be painted", async () => (await painted(pilot.page, "chart-log-idle-speed", "--ink")) > 200);
  assert.equal(await painted(pilot.page, "chart-log-idle-speed", "--paint"), 0);

  const keyboard = new Keyboard(pilot.page);
  await keyboard.reach("chart-peak-cht");
  const words = (index) => cht.points.at(index).words;
  const reads = (index) => until(words(index), async () => (await pilot.says("reading-peak-cht")).includes(words(index)));
  await reads(-1);
  await keyboard.press("ArrowLeft");
  await reads(-2);
  await keyboard.press("Home");
  await reads(0);
  await keyboard.press("ArrowLeft");
  await reads(0);
  await keyboard.press("ArrowRight");
  await reads(1);
  assert.equal(await pilot.of("reading-peak-cht").getAttribute("role"), "status", "what is walked to is read out");
  await keyboard.press("Enter");
  await pilot.on("record");
  assert.ok(pilot.page.url().endsWith(cht.points[1].record));
  await pilot.page.goBack();
  await pilot.on("trends");
  await reads(1);

  // A finger on the drawing takes the nearest.
  const box = await pilot.of("chart-peak-cht").locator(".u-over").boundingBox();
  await pilot.page.mouse.click(box.x + 6, box.y + box.height - 10);
  await reads(0);
  await pilot.tap("after-peak-cht");
  await reads(1);

  await pilot.tap("table-open-peak-cht");
  await pilot.of("table-peak-cht").waitFor();
  const rows = pilot.of("table-peak-cht").locator("tbody tr");
  assert.equal(await rows.count(), 12);
  assert.ok((await rows.nth(3).innerText()).includes(words(3)));
});

test("a chart follows dark and light while it is looked at", async (t) => {
  const { machine, pilot } = await withMachine(t);
  await logged(pilot, machine, rising(3));
  await pilot.goTo("machine", machine, "trends");
  await pilot.on("trends");
  const inked = async () => (await painted(pilot.page, "chart-peak-cht", "--ink")) > 200;
  await until("ink in the light", inked);
  await pilot.page.emulateMedia({ colorScheme: "dark" });
  await until("ink in the dark", inked);
  await pilot.page.emulateMedia({ colorScheme: "light" });
  await until("ink in the light again", inked);
});

test("what the records tell: how few it rests on stands over every figure, and an interval only shortens", async (t) => {
  const here = world(t);
  signed(here, "demo", "--school", "--signatory", PERSON);
  const { pilot } = await comesIn(t, here);
  await pilot.on("machines");
  await pilot.tap("to-fleet");
  await pilot.on("fleet");
  const parts = await pilot.ask("life-parts");
  const shown = await pilot.named("life-");
  assert.deepEqual(shown, parts.map(({ id }) => `life-${id}`));
  const often = parts.reduce((most, part) => (part.failed > most.failed ? part : most));
  await pilot.tap(`life-${often.id}`);
  await pilot.on("life");
  const life = await pilot.ask("life", { component: often.id, chance: null, in_force: null });
  assert.equal(await pilot.says("rests-on"), life.rests_on);
  assert.equal(await pilot.says("life-says"), life.sentences[0]);
  await pilot.tap("life-ask");
  for (const inForce of [200, 0.2]) {
    await pilot.type("life-in-force", String(inForce));
    const told = await pilot.ask("life", { component: often.id, chance: null, in_force: inForce });
    assert.ok(told.every === null || told.every <= inForce, `${told.every} h is longer than the ${inForce} h in force`);
    await until(`${inForce} h in force`, async () => (await pilot.says("intervals")).includes(`${inForce}\u00a0h`));
    assert.equal(await pilot.attribute("intervals", "data-shortens"), String(told.shortens));
    assert.equal(await pilot.of("life-every").count(), told.shortens ? 1 : 0, "a figure only where it shortens");
  }
  const [over, figure] = await Promise.all(["rests-on", "intervals"].map(async (test) => (await pilot.of(test).boundingBox()).y));
  assert.ok(over < figure, "what it rests on stands above");
  await pilot.page.locator(".chart canvas").waitFor();

  await pilot.goTo("looking");
  await pilot.on("looking");
  const { people, caution } = await pilot.ask("looking");
  assert.equal(await pilot.says("looking-caution"), caution);
  assert.ok(people.length > 1, "an instructor sees everybody");
  for (const { name } of people) assert.equal(await pilot.of(`looks-${name}`).count(), 1, name);

  await pilot.goTo("worth");
  await pilot.on("worth");
  const { points } = await pilot.ask("list-worth");
  for (const sort of ["often", "plain", "never", "few"]) {
    const count = points.filter((point) => point.sort === sort).length;
    if (count > 0) assert.match(await pilot.of(`worth-${sort}`).locator("h2").innerText(), new RegExp(`\\(${count}\\)`));
  }
});

test("with no record there is nothing to tell, and that is what is said", async (t) => {
  const here = world(t);
  const { pilot } = await comesIn(t, here);
  await pilot.begin(PERSON, PIN);
  for (const [place, none] of [["fleet", "fleet-none"], ["looking", "looking-none"], ["worth", "worth-none"]]) {
    await pilot.goTo(place);
    await pilot.on(place);
    assert.ok((await pilot.says(none)).length > 10);
  }
});

test("the board tells the same as a phone; how people look it tells instructors alone", async (t) => {
  const { root, mo, server } = await schoolWithBoard(t);
  const { pilot } = await comesIn(t, root);
  await pilot.on("machines");
  const wall = await opens(t, server, { viewport: WIDE });
  await signsIn(wall, root);
  await wall.of("to-fleet").click();
  await wall.on("fleet");
  const parts = await pilot.ask("life-parts");
  const names = () => wall.page.locator('[data-test="sheet"] [data-test^="life-"]').evaluateAll((all) => all.map((one) => one.dataset.test));
  assert.deepEqual(await names(), parts.map(({ id }) => `life-${id}`));
  await wall.of(`life-${parts[0].id}`).click();
  await wall.of("rests-on").waitFor();
  const life = await pilot.ask("life", { component: parts[0].id, chance: null, in_force: null });
  assert.equal(await wall.says("rests-on"), life.rests_on);
  await wall.close();

  await wall.of("to-worth").click();
  await wall.on("worth");
  assert.equal(await wall.says("worth-caution"), (await pilot.ask("list-worth")).caution);
  await wall.close();

  await wall.of("to-looking").click();
  await wall.on("looking");
  const { people } = await pilot.ask("looking");
  for (const { name } of people) assert.equal(await wall.of(`looks-${name}`).count(), 1, name);
  await wall.close();

  await wall.of("sign-out").click();
  await signsIn(wall, mo);
  assert.equal(await wall.of("to-looking").count(), 0, "no pilot sees how others look");
  assert.equal(await wall.of("to-fleet").count(), 1);
});
