// A picture of every screen into tests/shots: phone and wide, light and dark, letters twice as large, the real window.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { PHONE, WIDE } from "./help/browser.mjs";
import { settled } from "./help/layout.mjs";
import { PERSON, PIN } from "./help/pilot.mjs";
import { TOURS } from "./help/tour.mjs";
import { openWindow } from "./help/window.mjs";
import { until, world } from "./help/world.mjs";

const shots = fileURLToPath(new URL("../shots", import.meta.url));
const LOOKS = [
  { name: "phone-light", viewport: PHONE, colorScheme: "light" },
  { name: "phone-dark", viewport: PHONE, colorScheme: "dark" },
  { name: "wide-light", viewport: WIDE, colorScheme: "light" },
  { name: "wide-dark", viewport: WIDE, colorScheme: "dark" },
];
const LARGE = [{ name: "phone-large-letters", viewport: PHONE, colorScheme: "light" }];

rmSync(shots, { recursive: true, force: true });

for (const [part, tour] of Object.entries(TOURS))
  for (const [letters, looks] of [[1, LOOKS], [2, LARGE]])
    test(`the ${part}, letters ${letters} times as large`, async (t) => {
      let number = 0;
      const shoot = async (page, name) => {
        const file = `${part}-${String((number += 1)).padStart(2, "0")}-${name}.png`;
        for (const look of looks) {
          await page.setViewportSize(look.viewport);
          await page.emulateMedia({ colorScheme: look.colorScheme });
          await settled(page);
          await page.screenshot({ path: join(shots, look.name, file) });
        }
      };
      await tour(t, shoot, { letters });
    });

test("the real window", async (t) => {
  const here = world(t);
  const pilot = await openWindow(here);
  mkdirSync(join(shots, "window"), { recursive: true });
  const shoot = async (name) =>
    writeFileSync(join(shots, "window", `${name}.png`), Buffer.from(await pilot.driver.picture(), "base64"));
  await pilot.on("first");
  await shoot("1-first");
  await pilot.type("name", PERSON);
  await pilot.type("pin", PIN);
  await pilot.type("pin-twice", PIN);
  await pilot.tap("begin");
  await pilot.tap("empty-demo");
  await pilot.driver.one("h2 a");
  await shoot("2-machines");
  const machine = here.cli("machine", "list").said.find(({ engine }) => engine === "Bramble 125").id;
  const places = [
    ["3-walk-map", "walk", machine, "before-flight"],
    ["4-point", "walk", machine, "before-flight", "point", "cylinder-base"],
    ["5-point-measured", "walk", machine, "before-flight", "point", "throttle-free-travel"],
    ["6-machine", "machine", machine],
  ];
  for (const [name, ...place] of places) {
    await pilot.goTo(...place);
    await until(name, async () => (await pilot.driver.all(`[data-screen="${name.replace(/^\d-|-measured$/g, "")}"]`)).length);
    await shoot(name);
  }
});
