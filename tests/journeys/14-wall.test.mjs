// The school's board on a big screen: signed in by a device, live; what is prepared on it is signed elsewhere.
import assert from "node:assert/strict";
import { test } from "node:test";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { WIDE } from "./help/browser.mjs";
import { walked, signed } from "./help/prepared.mjs";
import { faultyLine, sheet } from "./help/publication.mjs";
import { IDA, MO, ROOT, SCHOOL } from "./help/school.mjs";
import { day, until } from "./help/world.mjs";
import { live, opens, schoolWithBoard, signsIn, signsPrepared, synced } from "./help/wall.mjs";

test("the board shows who needs a person first, and follows by itself; lost, it says so", async (t) => {
  const { root, mo, server, machines } = await schoolWithBoard(t);
  const wall = await opens(t, server, { viewport: WIDE });
  assert.match(await wall.page.locator("main").innerText(), new RegExp(SCHOOL));
  await signsIn(wall, root);
  assert.match(await wall.says("who"), new RegExp(`${ROOT}\\s*instructor`));
  const all = await wall.order();
  assert.equal(all.length, 4);
  assert.equal(all.at(-1), "Hill bramble", "what may fly stands last");
  const { said } = root.cli("school", "board");
  assert.deepEqual(all, said.rows.map(({ card }) => card.name), "in the order that a phone has");
  assert.match(await wall.row(machines.torn).innerText(), /grounded.*Mo Tansy.*Cylinder base/s);
  assert.match(await wall.says("caution"), /not permission/);

  const shows = async (...names) => assert.deepEqual((await wall.order()).sort(), names.sort());
  await wall.of("count-fit").click();
  await shows("Hill bramble");
  assert.equal(await wall.of("count-fit").getAttribute("aria-pressed"), "true");
  await wall.of("count-fit").click();
  await wall.of("count-defects").click();
  await shows("Shed bramble");
  await wall.of("every").click();
  await wall.of("count-second").click();
  await shows("Ida's own");
  await wall.of("every").click();
  await wall.of("owner").selectOption({ label: IDA });
  await shows("Ida's own", "Winter bramble");
  await wall.of("owner").selectOption("");
  await wall.of("search").fill("netting");
  await shows("Shed bramble");
  assert.match(await wall.says("shown"), /1 of 4/);
  await wall.of("search").fill("");
  await wall.of("sort").selectOption("name");
  assert.deepEqual(await wall.order(), ["Hill bramble", "Ida's own", "Shed bramble", "Winter bramble"]);

  // With the keyboard alone: the name opens, Escape closes, and one is where one was.
  await wall.of(`open-${machines.torn}`).focus();
  await wall.page.keyboard.press("Enter");
  await wall.on("machine");
  assert.match(await wall.of("sheet").innerText(), /Shed bramble.*Netting.*What happened/s);
  assert.equal(await wall.page.evaluate(() => document.activeElement?.textContent), "Shed bramble", "read from its title on");
  await wall.page.keyboard.press("Escape");
  await wall.of("sheet").waitFor({ state: "detached" });
  assert.equal(await wall.page.evaluate(() => document.activeElement?.dataset.test), `open-${machines.torn}`);

  // Somebody finds something at the other end of the field.
  await live(wall, "live");
  walked(mo, machines.fit, { "cylinder-base": "wet" });
  synced(mo);
  await until("the row that changed", async () => /grounded/.test(await wall.row(machines.fit).innerText()));

  await server.stop();
  await live(wall, "lost");
  assert.match(await wall.says("live"), /Connection lost/);
  assert.equal((await wall.order()).length, 4, "what was shown stays");
  await server.start(Number(new URL(server.address).port));
  await live(wall, "live");

  // A lost phone takes its board with it.
  await wall.of("sign-out").click();
  await signsIn(wall, mo);
  assert.equal(await wall.of("to-publish").count(), 0);
  await wall.of(`open-${machines.torn}`).click();
  await wall.on("machine");
  assert.equal(await wall.of("defer-cylinder-base").count(), 0, "a pilot defers nothing");
  signed(root, "school", "revoke", MO, "--why", "lost at the field");
  synced(root);
  await wall.of("sign-in").waitFor();
});

test("a deferral and a second look: prepared on the board, signed by a device, shown by itself", async (t) => {
  const { root, server, machines } = await schoolWithBoard(t);
  const wall = await opens(t, server, { viewport: WIDE });
  await signsIn(wall, root);
  await wall.of(`open-${machines.torn}`).click();
  await wall.on("machine");
  await wall.of("defer-cylinder-base").click();
  await wall.of("defer-condition").waitFor();

  await wall.of("defer-reason").fill("The gasket comes on Monday");
  await wall.of("prepare").click();
  assert.equal(await wall.of("fault").getAttribute("data-kind"), "deferral-words-missing");
  assert.equal(await wall.of("defer-reason").inputValue(), "The gasket comes on Monday", "nothing typed is lost");
  await wall.of("defer-condition").fill("On the ground only");
  await wall.of("defer-date").fill(day(10));
  await wall.of("prepare").click();
  const text = await wall.code();
  assert.match(await wall.says("sign-there"), /sign it on your device/);
  assert.doesNotMatch(await wall.row(machines.torn).innerText(), /May wait/, "prepared is not signed");

  signsPrepared(root, text);
  await wall.page.locator('[data-test="sign-there"][data-waits="false"]').waitFor();
  await wall.close();
  assert.match(await wall.row(machines.torn).innerText(), /May wait.*Cylinder base/s);
  assert.match(await wall.says("to-prepared"), /\(0\)/);

  await wall.of(`eyes-${machines.looked}`).click();
  await wall.on("second");
  assert.match(await wall.of("sheet").innerText(), /kill switch/);
  const asked = await wall.code();
  signed(root, "second-look", "look", asked, "--joint", "head-nuts=good");
  synced(root);
  await wall.close();
  await until("the look to arrive", async () => (await wall.of(`eyes-${machines.looked}`).count()) === 0);
  assert.match(await wall.says("to-second"), /\(0\)/);
});

test("a data sheet: every fault by its line, then prepared, signed, and with the members", async (t) => {
  const { root, mo, server } = await schoolWithBoard(t);
  const wall = await opens(t, server, { viewport: WIDE });
  await signsIn(wall, root);
  await wall.of("to-publish").click();
  await wall.on("publish");
  const file = (faulty) => ({ name: "wisp-80.toml", mimeType: "text/plain", buffer: Buffer.from(sheet({ faulty })) });
  await wall.of("publish-files").setInputFiles(file(true));
  await wall.page.locator('[data-test="publish-preview"][data-good="false"]').waitFor();
  assert.match(await wall.says("publish-preview"), new RegExp(`engines/wisp-80.toml, line ${faultyLine()}\\b`));
  await wall.of("publish-title").fill("Wisp");
  await wall.of("publish-note").fill("The club's new engine");
  await wall.of("publish-title").press("Enter");
  await wall.page.locator('[data-test="prepare"][aria-disabled="true"]').waitFor();
  assert.equal(await wall.of("sign-there").count(), 0, "nothing with a fault is prepared");
  await wall.of("publish-files").setInputFiles(file(false));
  await wall.page.locator('[data-test="publish-preview"][data-good="true"]').waitFor();
  await wall.of("prepare").click();
  const text = await wall.code();
  await wall.close();
  assert.match(await wall.says("to-prepared"), /\(1\)/);
  signsPrepared(root, text);
  await until("the draft to be gone", async () => /\(0\)/.test(await wall.says("to-prepared")));
  synced(mo);
  const { published } = mo.cli("school", "show").said;
  assert.deepEqual(published.map(({ title, version, used }) => [title, version, used]), [["Wisp", 1, true]]);
});

test("a passphrase lets look, and no more", async (t) => {
  const { serving, server, machines } = await schoolWithBoard(t);
  const file = join(serving.folder, "passphrase");
  writeFileSync(file, "four plain invented words\n");
  assert.equal(serving.cli("board-passphrase", file).code, 0);
  const wall = await opens(t, server, { viewport: WIDE });
  await wall.of("passphrase-open").click();
  await wall.of("passphrase").fill("four plain invented");
  await wall.of("passphrase-go").click();
  assert.equal(await wall.of("fault").getAttribute("data-kind"), "passphrase-wrong");
  await wall.of("passphrase").fill("four plain invented words");
  await wall.of("passphrase-go").click();
  await wall.of("live").waitFor();
  assert.match(await wall.says("who"), /looking only/);
  assert.equal(await wall.of("to-publish").count(), 0);
  await wall.of(`open-${machines.torn}`).click();
  await wall.on("machine");
  assert.equal(await wall.of("defer-cylinder-base").count(), 0);
});
