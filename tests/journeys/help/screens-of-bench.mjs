// The torque bench's screens, from the choice of a tool to the last click.
import { tightens } from "../chapters/tightening.mjs";

const bench = (machine, joint = "head-nuts") => async (pilot, ids) => {
  await pilot.goTo("walk", ids[machine], "after-service", "point", `torque-${joint}`);
  await pilot.on("point");
};

/** The bench with one of the tools in hand, nothing clicked yet. */
const withTool = (words) => async (pilot, ids) => {
  await bench("bench")(pilot, ids);
  await pilot.page.locator('[data-test^="use-tool-"], [data-test="other-tool"]').first().waitFor();
  if (await pilot.has("other-tool")) await pilot.tap("other-tool");
  await pilot.page.locator('[data-test^="use-tool-"]').filter({ hasText: words }).click();
  await pilot.page.locator('[data-test="clicked"], [data-test="use-all-the-same"]').waitFor();
};

const GOOD = "Wrench 2";
const OLD = "Grandfather";

/** Every nut has clicked. */
const finished = (tool) => async (pilot, ids) => {
  await withTool(tool)(pilot, ids);
  if (tool === OLD) {
    await pilot.type("reason", "The other wrench is at the calibration laboratory");
    await pilot.tap("use-all-the-same");
  }
  await tightens(pilot, [1, 1, 2, 1]);
};

export const BENCH = [
  [
    "torque-no-number",
    async (pilot, ids) => {
      await bench("numberless", "propeller-bolts")(pilot, ids);
      await pilot.of("no-number").waitFor();
    },
  ],
  ["torque-unconfirmed", bench("numberless")],
  [
    "torque-which-tool",
    async (pilot, ids) => {
      await bench("bench")(pilot, ids);
      await pilot.named("use-tool-");
    },
  ],
  ["torque-first-nut", withTool(GOOD)],
  [
    "torque-across",
    async (pilot, ids) => {
      await withTool(GOOD)(pilot, ids);
      await tightens(pilot, [1, 1, 2, 1], 6);
      await pilot.tap("eighths-2");
    },
  ],
  [
    "torque-turned-more",
    async (pilot, ids) => {
      await withTool(GOOD)(pilot, ids);
      await tightens(pilot, [1, 1, 2, 1], 4);
      await pilot.tap("eighths-more");
    },
  ],
  [
    "torque-refused",
    async (pilot, ids) => {
      await withTool(OLD)(pilot, ids);
      if (await pilot.of("reason").inputValue()) return;
      await pilot.tap("use-all-the-same");
      await pilot.fault();
    },
  ],
  ["torque-finished", finished(GOOD)],
  ["torque-finished-refused", finished(OLD)],
  [
    "torque-slip",
    async (pilot, ids) => {
      await finished(GOOD)(pilot, ids);
      await pilot.type("reading", "127");
      await pilot.choose("reading-unit", "lbf.ft");
      await pilot.tap("torque-done");
      await pilot.fault();
    },
  ],
  // Last: what is typed of an adapter is kept, as it should be.
  [
    "torque-adapter",
    async (pilot, ids) => {
      await withTool(GOOD)(pilot, ids);
      await pilot.tap("adapter");
      await pilot.tap("adapter-fitted");
      await pilot.type("adapter-lever", "250");
    },
  ],
];
