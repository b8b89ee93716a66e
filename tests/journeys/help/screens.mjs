// Every screen in every state that looks different, and the way to it: for axe, for the layout, for pictures.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { away } from "./database.mjs";
import { photograph } from "./picture.mjs";
import { PIN } from "./pilot.mjs";
import { begun, registered, walked } from "./prepared.mjs";
import { place, point } from "./ways.mjs";

/** A world in which every screen has something to show. */
export function populate(here) {
  here.cli("demo");
  const of = (engine) => here.cli("machine", "list").said.find((card) => card.engine === engine).id;
  const [bramble, teasel, linnet] = ["Bramble 125", "Teasel 185", "Linnet E"].map(of);
  const own = registered(here);
  begun(here, teasel, { only: 5 });
  away(here, 60);
  walked(here, own, { "cylinder-base": "old-stain" });
  begun(here, own, { found: { "cylinder-base": "wet", "exhaust-springs": "worn" }, except: ["canopy", "trimmers"] });
  begun(here, bramble, { only: 23 });
  here.cli("export", own, join(here.folder, "good.jsonl"));
  return { own, bramble, teasel, linnet, bundle: readFileSync(join(here.folder, "good.jsonl"), "utf8") };
}

/** Before anybody signs here. */
export const FIRST = [
  ["first", async (pilot) => pilot.on("first")],
  [
    "first-refused",
    async (pilot) => {
      await pilot.type("name", "Juno Larch");
      await pilot.type("pin", "123456");
      await pilot.tap("begin");
      await pilot.fault();
    },
  ],
  ["machines-empty", async (pilot) => pilot.begin()],
];

/** The latest inspection of the pilot's own machine. */
const inspection = async (pilot, { own }) =>
  (await pilot.ask("machine", { id: own })).timeline.find(({ kind }) => kind === "inspection").record;

export const SCREENS = [
  ["machines", place("machines")],
  [
    "machine-form",
    async (pilot, ids) => {
      await place("machine-form", "machine", "new")(pilot, ids);
      await pilot.type("machine-name", "Meadow bramble");
      await pilot.tap("engine-bramble-125");
      await pilot.tap("part-reserve");
      await pilot.tap("serials");
      await pilot.type("pin", "000000");
      await pilot.tap("sign");
      await pilot.fault();
    },
  ],
  ["machine-edit", place("machine-form", "machine", "own", "edit")],
  ["machine-limited", place("machine", "machine", "own")],
  ["machine-grounded", place("machine", "machine", "teasel")],
  ["walk-map", place("walk-map", "walk", "bramble", "before-flight")],
  ["walk-map-stepped-back", place("walk-map", "walk", "teasel", "before-flight")],
  ["point", point("bramble", "cylinder-base")],
  ["point-critical", point("bramble", "kill-switch-off")],
  ["point-four-answers", point("bramble", "helmet")],
  ["point-asked-again", point("teasel", "self")],
  [
    "point-noted",
    async (pilot, ids) => {
      await point("own", "cylinder-base")(pilot, ids);
      if (await pilot.has("noted")) return;
      const buffer = await photograph(pilot.page, 1200, 900);
      await pilot.of("photo").setInputFiles({ name: "base.jpg", mimeType: "image/jpeg", buffer });
      await pilot.page.locator(".thumb").waitFor();
      await pilot.tap("say-more");
      await pilot.type("note", "Wet on the carburettor side, as wide as a thumb; dry elsewhere.");
      await pilot.tap("note-keep");
      await pilot.of("noted").waitFor();
    },
  ],
  [
    "point-note-sheet",
    async (pilot, ids) => {
      await point("own", "cylinder-base")(pilot, ids);
      await pilot.tap("say-more");
    },
  ],
  [
    "point-photo",
    async (pilot, ids) => {
      await point("own", "cylinder-base")(pilot, ids);
      await pilot.page.locator(".thumb").click();
    },
  ],
  ["point-measured-empty", point("bramble", "propeller-tracking")],
  [
    "point-measured",
    async (pilot, ids) => {
      await point("bramble", "throttle-free-travel")(pilot, ids);
      await pilot.key("0.2", "in");
      await pilot.page.locator('[data-test="judged"][data-means="watch"]').waitFor();
    },
  ],
  ["summary", place("summary", "walk", "own", "before-flight", "summary")],
  ["summary-early", place("summary", "walk", "bramble", "before-flight", "summary")],
  [
    "sign-sheet",
    async (pilot, ids) => {
      await place("summary", "walk", "own", "before-flight", "summary")(pilot, ids);
      await pilot.tap("sign-with-pin");
      await pilot.signWith("1234567");
      await pilot.fault();
    },
  ],
  ["verdict-grounded", place("verdict", "machine", "teasel", "verdict")],
  ["verdict-limited", place("verdict", "machine", "own", "verdict")],
  ["verdict-fit", place("verdict", "machine", "linnet", "verdict")],
  ["put-right", place("put-right", "machine", "teasel", "right", "shroud-mounts")],
  ["limit", place("limit", "machine", "own", "limit", "head-nut-torque")],
  [
    "record",
    async (pilot, ids) => {
      await pilot.goTo("record", await inspection(pilot, ids), "cylinder-base");
      await pilot.on("record");
    },
  ],
  [
    "otherwise",
    async (pilot, ids) => {
      await pilot.goTo("record", await inspection(pilot, ids), "cylinder-base", "otherwise");
      await pilot.on("otherwise");
    },
  ],
  ["verify", place("verify", "verify")],
  [
    "verify-good",
    async (pilot, ids) => {
      await place("verify", "verify")(pilot, ids);
      await pilot.type("verify-text", ids.bundle);
      await pilot.tap("verify");
      await pilot.page.locator('[data-test="verified"][data-good="true"]').waitFor();
    },
  ],
  [
    "verify-bad",
    async (pilot, ids) => {
      await place("verify", "verify")(pilot, ids);
      await pilot.type("verify-text", ids.bundle.replaceAll("old-stain", "dry"));
      await pilot.tap("verify");
      await pilot.page.locator('[data-test="verified"][data-good="false"]').waitFor();
    },
  ],
  [
    "settings",
    async (pilot, ids) => {
      await place("settings", "settings")(pilot, ids);
      if (!(await pilot.of("pin-old").isVisible())) await pilot.tap("change-pin");
      await pilot.type("pin-old", PIN);
      await pilot.type("pin-new", "1");
      await pilot.type("pin-twice", "1");
      await pilot.tap("pin-change");
      await pilot.fault();
    },
  ],
  [
    "not-found",
    async (pilot) => {
      await pilot.goTo("machine", "00000000-0000-7000-8000-000000000000");
      await pilot.fault();
    },
  ],
];
