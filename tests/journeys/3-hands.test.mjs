// By the keyboard alone, and by ear: whoever can't tap or can't see gets as far as everybody.
import assert from "node:assert/strict";
import { test } from "node:test";
import { browse } from "./help/browser.mjs";
import { Keyboard } from "./help/keyboard.mjs";
import { Pilot, PIN, PERSON } from "./help/pilot.mjs";
import { registered } from "./help/prepared.mjs";
import { serve } from "./help/server.mjs";
import { heard } from "./help/tree.mjs";
import { until, world } from "./help/world.mjs";

test("by the keyboard alone: from first start to an answered point, and a signature without holding", async (t) => {
  const here = world(t);
  const server = await serve(here);
  const page = await (await browse(t)).newPage();
  await page.goto(server.address);
  const pilot = new Pilot(page);
  const keys = new Keyboard(page);

  await pilot.on("first");
  await keys.fill("name", PERSON);
  await keys.fill("pin", PIN);
  await keys.fill("pin-twice", PIN);
  await keys.press("Enter");
  await pilot.on("machines");

  await keys.use("empty-add", "Enter");
  await pilot.on("machine-form");
  await keys.fill("machine-name", "Field bramble");
  await keys.use("engine-bramble-125", " ");
  await keys.fill("hours", "12");
  await keys.fill("flights", "20");
  await keys.fill("pin", PIN);
  await keys.use("sign", "Enter");
  await pilot.on("machine");

  await keys.use("walk-before-flight", "Enter");
  await pilot.on("walk-map");
  await keys.use("go-on", "Enter");
  await pilot.on("point");
  await pilot.movesOn(() => keys.use("answer-steady", " "));
  await readsANote(pilot, keys);

  await keys.use("to-map", "Enter");
  await pilot.on("walk-map");
  await keys.use("to-summary", "Enter");
  await pilot.on("summary");
  await keys.use("sign-with-pin", "Enter");
  await keys.fill("pin", PIN);
  await keys.press("Enter");
  await pilot.on("verdict");
  assert.equal(await pilot.of("verdict").getAttribute("data-state"), "grounded", "a list cut short grounds");
});

/** A sheet over the screen keeps the keyboard in it, and Escape leads back to where it was. */
async function readsANote(pilot, keys) {
  await keys.use("say-more", "Enter");
  await keys.fill("note", "Wind from the west");
  await keys.press("Escape");
  await pilot.of("noted").waitFor();
  assert.equal(await keys.focused(), "say-more");
}

test("by ear: every answer says what is seen and what it means, and so does the measured point", async (t) => {
  const here = world(t);
  const machine = registered(here);
  const server = await serve(here);
  const page = await (await browse(t)).newPage();
  await page.goto(server.address);
  const pilot = new Pilot(page);
  await pilot.on("machines");
  const { stations } = await pilot.ask("walk", { machine, occasion: "before-flight" });
  const said = { serviceable: "serviceable", watch: "to watch", unserviceable: "unserviceable", "not-fitted": "not fitted" };

  for (const { id, title, good, ask } of stations.flatMap(({ points }) => points)) {
    await pilot.goTo("walk", machine, "before-flight", "point", id);
    await page.getByRole("heading", { level: 1, name: title, exact: true }).waitFor();
    await until(`${id}: the heading to be read first`, () =>
      page.evaluate((title) => document.activeElement.textContent === title && document.title.startsWith(title), title),
    );
    assert.match(await page.locator("main").innerText(), new RegExp(escaped(good)));
    const tree = await heard(page);
    const names = (role) => tree.filter((node) => node.role === role).map(({ name }) => name);
    if (ask.by === "words") {
      assert.ok(names("group").includes("What do you see?"));
      const answers = ask.answers.map(({ words, means }) => `${words}, ${said[means]}`);
      assert.deepEqual(names("button").slice(0, answers.length), answers, id);
    } else {
      assert.deepEqual(names("textbox"), [`Measured value; the band is ${ask.words}`]);
    }
  }
});

const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
