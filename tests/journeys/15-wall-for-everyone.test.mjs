// The board for everybody: on a big screen and in the hand, light and dark, with letters twice as large.
import assert from "node:assert/strict";
import { test } from "node:test";
import { violations } from "./help/axe.mjs";
import { PHONE, WIDE } from "./help/browser.mjs";
import { pale } from "./help/contrast.mjs";
import { broken, covered, cut, moving, settled, sideways, tooSmall } from "./help/layout.mjs";
import { sheet } from "./help/publication.mjs";
import { live, opens, schoolWithBoard, signsIn } from "./help/wall.mjs";

/** Every place of the page, in turn. */
async function everywhere(t, look, looks) {
  const { root, server, machines } = await schoolWithBoard(t);
  const wall = await opens(t, server, looks);
  await wall.of("code").waitFor();
  await look(wall.page, "sign-in");
  await signsIn(wall, root);
  await live(wall, "live");
  await look(wall.page, "board");
  const { timeline } = root.cli("show", machines.torn).said;
  const found = timeline.find(({ kind }) => kind === "inspection").record;
  const places = [
    ["machine", "machine", machines.torn],
    ["machine with work", "machine", machines.looked],
    ["defer", "machine", machines.torn, "defer", "cylinder-base"],
    ["record", "record", found, "cylinder-base"],
    ["members", "members"],
    ["second looks", "second"],
    ["second look", "second", machines.looked],
    ["publish", "publish"],
    ["prepared", "prepared"],
    ["lives", "fleet"],
    ["life", "fleet", "exhaust"],
    ["looking", "looking"],
    ["worth", "worth"],
    ["nothing", "nowhere"],
  ];
  for (const [name, ...parts] of places) {
    await wall.page.evaluate((hash) => void (location.hash = hash), "#/" + parts.map(encodeURIComponent).join("/"));
    await wall.on(parts[0]);
    if (name === "second look") await wall.of("code").waitFor();
    if (name === "publish") {
      await wall.of("publish-files").setInputFiles({ name: "wisp-80.toml", mimeType: "text/plain", buffer: Buffer.from(sheet({ faulty: true })) });
      await wall.of("publish-preview").waitFor();
    }
    await look(wall.page, name);
  }
  await wall.close();
  await server.stop();
  await live(wall, "lost");
  await look(wall.page, "lost");
}

test("every place of the board is for everybody", async (t) => {
  const wrong = [];
  const measured = async (where, found) => wrong.push(...(await found).map((what) => `${where}: ${what}`));
  await everywhere(t, async (page, name) => {
    for (const [size, viewport] of Object.entries({ wide: WIDE, phone: PHONE, narrow: { width: 320, height: 640 } })) {
      await page.setViewportSize(viewport);
      for (const colorScheme of ["light", "dark"]) {
        await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
        await settled(page);
        await measured(`${name}, ${size}, ${colorScheme}`, violations(page));
        await measured(`${name}, ${size}, ${colorScheme}, pale`, pale(page));
      }
      for (const [what, found] of Object.entries({ sideways, cut, broken, covered, tooSmall, moving }))
        await measured(`${name}, ${size}, ${what}`, found(page));
    }
    await page.setViewportSize(WIDE);
  }, { viewport: WIDE });
  assert.deepEqual(wrong, []);
});

test("every place of the board holds letters twice as large", async (t) => {
  const wrong = [];
  await everywhere(t, async (page, name) => {
    for (const [size, viewport] of Object.entries({ wide: WIDE, phone: PHONE })) {
      await page.setViewportSize(viewport);
      await settled(page);
      for (const [what, found] of Object.entries({ sideways, cut, broken, covered }))
        wrong.push(...(await found(page)).map((where) => `${name}, ${size}, ${what}: ${where}`));
    }
  }, { viewport: WIDE, letters: 2 });
  assert.deepEqual(wrong, []);
});
