// A school with its server, on this machine: followed by address, admitted from its waiting list, offline in between.
import assert from "node:assert/strict";
import { test } from "node:test";
import { walked } from "./help/prepared.mjs";
import { BoardPage } from "./help/board-page.mjs";
import { PIN } from "./help/pilot.mjs";
import { again, arrives, founded, MO, owns, ROOT, SCHOOL, takesIn } from "./help/school.mjs";
import { schoolServer } from "./help/school-server.mjs";
import { until } from "./help/world.mjs";

/** By the server's address: looked at, compared, signed. */
async function follows(pilot, address, code) {
  await pilot.goTo("school", "address");
  await pilot.on("school-address");
  await pilot.type("address", address);
  await pilot.tap("address-look");
  await pilot.on("school-card");
  assert.equal(await pilot.says("school-code"), code, "the code that the school itself tells");
  await pilot.sign();
  await pilot.on("school");
}

/** A round, asked for on the screen; how it then stands. */
async function syncs(pilot, state) {
  await pilot.goTo("school", "server");
  await pilot.on("server");
  await pilot.tap("sync-now");
  await pilot.page.locator(`[data-test="sync"][data-state="${state}"]`).waitFor();
  await pilot.page.locator('[data-test="sync-now"]:not([aria-disabled="true"])').waitFor();
}

const waiting = async (pilot) => ((await pilot.has("sync-waiting")) ? pilot.says("sync-waiting") : "");

test("a school's server: joined by address, admitted from the waiting list; offline all goes on, and is told", async (t) => {
  const root = await arrives(t, ROOT);
  await founded(root);
  await again(root);
  const { code } = (await root.ask("school")).school;
  const server = await schoolServer(t, root);
  await follows(root, server.address, code);
  await syncs(root, "done");

  const mo = await arrives(t, MO);
  const machine = await owns(mo, "Hill bramble");
  await follows(mo, server.address, code);
  await syncs(mo, "waits");
  await mo.goTo("school");
  await mo.on("school");
  const spoken = await mo.says("own-code");

  await root.goTo("school", "admit");
  await root.on("admit");
  await root.tap(`applicant-${spoken}`);
  await root.on("admit-as");
  assert.equal(await root.says("applicant-code"), spoken);
  await root.tap("role-pilot");
  await root.sign();
  await root.on("admitted");
  await syncs(root, "done");
  await syncs(mo, "done");
  await mo.goTo("school");
  await mo.page.locator(".over", { hasText: "Pilot" }).waitFor();

  // The server is gone: everything goes on, what waits is told, and nothing is lost.
  await server.stop();
  walked(mo.here, machine, { "cage-net": "torn" });
  await syncs(mo, "failed");
  assert.match(await waiting(mo), /waits?/);
  await mo.goTo();
  await mo.on("machines");
  assert.equal(await mo.attribute("school-line", "data-state"), "failed");
  assert.match(await mo.says("school-line"), new RegExp(`${SCHOOL}.*waits?`, "s"));
  const colour = (test) => mo.of(test).locator(".soft").first().evaluate((element) => getComputedStyle(element).color);
  const plain = await mo.page.locator(".over").evaluate((element) => getComputedStyle(element).color);
  assert.equal(await colour("school-line"), plain, "being offline is no error");

  // It comes back: what waited goes out, the instructor's screen shows it by itself.
  await server.start();
  await syncs(mo, "done");
  assert.equal(await waiting(mo), "");
  await root.goTo("board");
  await root.on("board");
  await root.ask("sync");
  await root.of(`row-${machine}`).waitFor();
  assert.match(await root.says(`row-${machine}`), /Netting/);

  // What the server signed for is checked without it, and by the two together.
  await root.goTo("school", "server");
  await root.tap("receipts");
  await root.page.locator('[data-test="receipts-result"][data-good="true"]').waitFor();
  await mo.goTo("school", "compare");
  await mo.on("compare");
  await mo.of("code").waitFor();
  const told = await mo.of("code-out").textContent();
  await root.tap("to-compare");
  await root.on("compare");
  await root.type("code-text", told);
  await root.tap("code-take");
  await root.page.locator('[data-test="receipts-result"][data-good="true"]').waitFor();
});

test("a board signs in by a device, and what it prepares is signed there, where it was read", async (t) => {
  const root = await arrives(t, ROOT);
  await founded(root);
  const server = await schoolServer(t, root);
  await root.ask("school-look", { address: server.address });
  await root.ask("school-follow", { address: server.address, pin: PIN });
  const machine = await owns(root, "Field bramble");
  walked(root.here, machine, { "cage-net": "torn" });
  await root.ask("sync");
  await again(root);

  const page = new BoardPage(server.address);
  await root.tap("to-code");
  await root.on("code");
  await takesIn(root, await page.signInCode());
  await root.on("desk");
  assert.match(await root.page.locator("main").innerText(), new RegExp(`${SCHOOL}.*${server.address}`, "s"));
  await root.sign("000000");
  await root.page.locator('[data-kind="pin-wrong"]').waitFor();
  await root.sign();
  await root.on("desk-done");
  await page.signedIn();

  const deferral = { machine, point: "cage-net", until_hours: 45, condition: "Solo only", reason: "A spare net is on its way" };
  const code = await until("the board to have the machine", () => page.prepares(deferral).catch(() => null));
  await root.tap("desk-anew");
  await root.on("code");
  await takesIn(root, code);
  await root.on("desk-draft");
  assert.match(await root.page.locator("main").innerText(), /Solo only/);
  assert.equal(await root.attribute("preview", "data-state"), "limited", "what would then be the verdict");
  assert.equal((await root.ask("machine", { id: machine })).card.verdict.state, "grounded", "nothing is signed yet");
  await root.sign();
  await root.on("desk-done");
  await root.goTo("machine", machine);
  await root.page.locator('[data-test="to-verdict"][data-state="limited"]').waitFor();
  await until("the board to show it", async () => (await page.board()).rows[0].card.verdict.state === "limited");

  // Another school's device has nothing to do with it.
  const other = await arrives(t, MO);
  await founded(other, "Heron marsh");
  await other.goTo("code");
  await takesIn(other, await new BoardPage(server.address).signInCode());
  assert.equal((await other.fault()).kind, "desk-of-other");
});
