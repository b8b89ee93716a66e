// What an instructor does: the board, a second look for a machine that came by file, lists published to the members.
import assert from "node:assert/strict";
import { test } from "node:test";
import { PHONE, WIDE } from "./help/browser.mjs";
import { fit, tooled, walked, worked } from "./help/prepared.mjs";
import { faultyLine, sheet } from "./help/publication.mjs";
import { admitted, again, arrives, carried, founded, IDA, MO, owns, ROOT } from "./help/school.mjs";

test("the board tells who needs a person first, and leads to the second look that waits", async (t) => {
  const root = await arrives(t, ROOT);
  await founded(root);
  const mo = await arrives(t, MO);
  await admitted(root, mo, "pilot");
  const torn = await owns(mo, "Hill bramble");
  walked(mo.here, torn, { "cage-net": "torn" });
  const fine = fit(mo.here, "Quiet bramble", MO);
  const ida = await arrives(t, IDA);
  await admitted(root, ida, "mechanic");
  const bench = fit(ida.here, "Orchard bramble", IDA);
  tooled(ida.here);
  worked(ida.here, bench, ["head-retorqued"], { looked: true });
  for (const member of [mo, ida]) await carried(member, root);

  await again(root);
  await root.goTo("board");
  await root.on("board");
  const shown = async () => (await root.named("row-")).map((name) => name.slice(4));
  const order = await shown();
  assert.equal(order.at(-1), fine, "what may fly stands last");
  assert.deepEqual(new Set(order.slice(0, 2)), new Set([torn, bench]));
  assert.match(await root.says(`row-${torn}`), /Netting.*Mo Tansy/s);
  assert.ok(!(await root.has("board-table")), "cards in the hand");
  await root.page.setViewportSize(WIDE);
  await root.of("board-table").waitFor();
  assert.deepEqual(await shown(), order, "a table on a wide screen, in the same order");
  await root.page.setViewportSize(PHONE);

  await root.choose("filter-state", "fit");
  assert.deepEqual(await shown(), [fine]);
  await root.choose("filter-state", "");
  await root.of("filter-owner").selectOption({ label: IDA });
  assert.deepEqual(await shown(), [bench]);
  await root.of("filter-owner").selectOption("");
  await root.of("filter-second").check();
  assert.deepEqual(await shown(), [bench]);

  await root.tap(`second-${bench}`);
  await root.on("look-joints");
  await root.tap("joint-head-nuts-serviceable");
  await root.sign();
  await root.on("look-reply");
  await root.goTo("board");
  await root.on("board");
  assert.ok(!(await root.has(`second-${bench}`)), "looked at, by another person");
  await root.of("filter-second").uncheck();
  await root.tap(`board-${bench}`);
  await root.on("machine");
  assert.match(await root.says("entry-second-look"), new RegExp(ROOT));
});

test("what has a fault is told by file and line and can't be published; what is good comes to the members", async (t) => {
  const root = await arrives(t, ROOT);
  await founded(root);
  const mo = await arrives(t, MO);
  await admitted(root, mo, "pilot");
  assert.ok(!(await engines(mo)).includes("Wisp 80"));

  await root.goTo("school");
  await root.tap("to-publish");
  await root.on("publish");
  const choose = (text) => root.of("publish-files").setInputFiles({ name: "wisp-80.toml", mimeType: "text/plain", buffer: Buffer.from(text) });
  await choose(sheet({ faulty: true }));
  await root.page.locator('[data-test="publish-preview"][data-good="false"]').waitFor();
  assert.match(await root.says("publish-fault"), new RegExp(`engines/wisp-80\\.toml, line ${faultyLine()}\\b`));
  await root.type("publish-title", "Engines of the course");
  await root.type("publish-note", "For the summer course");
  await root.sign();
  assert.equal((await root.fault()).kind, "publish-faults");
  assert.equal(await root.of("publish-note").inputValue(), "For the summer course", "nothing typed is lost");

  // Put right in the file, and chosen again.
  await choose(sheet());
  await root.page.locator('[data-test="publish-preview"][data-good="true"]').waitFor();
  assert.match(await root.says("publish-preview"), /version 1.*wisp-80\.toml is new/s);
  await root.sign();
  await root.on("school");
  assert.match(await root.says("published"), /Engines of the course.*For the summer course/s);

  await carried(root, mo);
  await again(mo);
  assert.ok((await engines(mo)).includes("Wisp 80"), "a member's device has it, once the records came");
  await mo.goTo("school");
  await mo.on("school");
  assert.match(await mo.says("published"), new RegExp(`Engines of the course.*${ROOT}`, "s"));
  assert.ok(!(await mo.has("to-publish")));
  await mo.goTo("school", "publish");
  await mo.on("publish");
  await mo.of("publish-files").setInputFiles({ name: "wisp-80.toml", mimeType: "text/plain", buffer: Buffer.from(sheet()) });
  await mo.type("publish-title", "Mine");
  await mo.sign();
  assert.equal((await mo.fault()).kind, "publish-role");
});

const engines = async (pilot) => (await pilot.ask("choices")).engines.map(({ name }) => name);
