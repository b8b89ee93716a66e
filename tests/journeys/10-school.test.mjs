// A school without any server: founded, joined by codes that are pasted between two devices, roles that hold.
import assert from "node:assert/strict";
import { test } from "node:test";
import { PIN } from "./help/pilot.mjs";
import { walked } from "./help/prepared.mjs";
import { admitted, again, arrives, carried, founded, MO, newDevice, owns, ROOT, SCHOOL, shownCode, takesIn } from "./help/school.mjs";

const isIn = (pilot, state) => pilot.page.locator(`[data-test="to-verdict"][data-state="${state}"]`).waitFor();

/** Twelve letters of Crockford's base 32 in fours (https://www.crockford.com/base32.html, from memory: no I, L, O, U). */
const SPOKEN = /^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/;

async function founds(root) {
  await root.tap("to-school");
  await root.on("school-none");
  assert.match(await root.says("own-code"), SPOKEN);
  await root.tap("to-found");
  await root.on("school-found");
  await root.sign();
  assert.equal((await root.fault()).kind, "school-name");
  await root.type("school-name", SCHOOL);
  await root.sign("000000");
  await root.page.locator('[data-kind="pin-wrong"]').waitFor();
  assert.equal(await root.of("school-name").inputValue(), SCHOOL, "nothing typed is lost");
  await root.sign();
  await root.on("school");
}

test("a school is founded, and somebody joins by codes pasted between two devices", async (t) => {
  const root = await arrives(t, ROOT);
  const own = await owns(root, "Field bramble");
  assert.ok(!(await root.has("school-line")), "without a school there is nothing to tell of a server");
  await founds(root);
  assert.equal(await root.attribute(`enrolled-${own}`, "data-enrolled"), "true", "the founder's machines come under it");

  const mo = await arrives(t, MO);
  await mo.tap("to-school");
  await mo.tap("to-join");
  await mo.on("school-join");
  const introduction = await shownCode(mo);
  const spoken = await mo.says("own-code");

  await root.tap("to-admit");
  await root.on("admit");
  await takesIn(root, "not a code");
  assert.equal((await root.fault()).kind, "code-unreadable");
  await takesIn(root, introduction);
  await root.on("admit-as");
  assert.equal(await root.says("applicant-code"), spoken, "both screens show the same to be compared");
  await root.sign();
  assert.equal((await root.fault()).kind, "role-missing");
  await root.tap("role-pilot");
  await root.type("role-until", "2001-01-01");
  await root.sign();
  await root.page.locator('[data-kind="until-passed"]').waitFor();
  await root.type("role-until", "");
  await root.sign();
  await root.on("admitted");
  const answer = await shownCode(root);

  await takesIn(mo, introduction);
  assert.match((await mo.fault()).words, /not an answer/);
  await takesIn(mo, answer);
  await mo.on("school-answer");
  await mo.sign();
  await mo.on("school");
  assert.match(await mo.page.locator(".over").innerText(), /Pilot/);
  await mo.tap("back");
  await mo.on("machines");
  assert.match(await mo.says("school-line"), new RegExp(SCHOOL));
  assert.equal(await mo.attribute("school-line", "data-state"), "none");

  // Somebody else can't use that answer.
  const other = await arrives(t, "Ida Sorrel");
  await other.goTo("school", "join");
  await takesIn(other, answer);
  await other.on("school-answer");
  await other.sign();
  assert.equal((await other.fault()).kind, "letter-of-other");
});

test("a pilot's defect waits only by an instructor's signature", async (t) => {
  const root = await arrives(t, ROOT);
  await founded(root);
  const mo = await arrives(t, MO);
  const machine = await owns(mo, "Hill bramble");
  await admitted(root, mo, "pilot");
  walked(mo.here, machine, { "cage-net": "torn" });
  await again(mo);
  await mo.goTo("machine", machine);
  await isIn(mo, "grounded");
  assert.equal(await mo.attribute("to-enrol", "data-enrolled"), "true");
  const defers = async (pilot) => {
    await pilot.tap("defer-cage-net");
    await pilot.on("defer");
    await pilot.type("defer-hours", "45");
    await pilot.type("defer-condition", "Solo only");
    await pilot.type("defer-reason", "A spare net is on its way");
    await pilot.sign();
  };
  await defers(mo);
  const fault = await mo.fault();
  assert.equal(fault.kind, "not-entitled");
  assert.match(fault.words, new RegExp(`${SCHOOL}.*pilot`, "s"));
  assert.equal(await mo.of("defer-reason").inputValue(), "A spare net is on its way", "nothing typed is lost");

  await carried(mo, root);
  await again(root);
  await root.goTo("machine", machine);
  await defers(root);
  await root.on("machine");
  await isIn(root, "limited");

  await carried(root, mo);
  await again(mo);
  await mo.goTo("machine", machine);
  await isIn(mo, "limited");
  assert.match(await mo.says("entry-defect-deferred"), new RegExp(ROOT));

  // Out of the school its owner decides again.
  await mo.tap("to-enrol");
  await mo.on("enrol");
  await mo.sign();
  await mo.on("machine");
  await mo.page.locator('[data-test="to-enrol"][data-enrolled="false"]').waitFor();
});

test("another device of one's own; when it is lost its key is ended, and what it signs then counts for nothing", async (t) => {
  const root = await arrives(t, ROOT);
  await founded(root);
  const mo = await arrives(t, MO);
  await admitted(root, mo, "pilot");
  const machine = await owns(mo, "Hill bramble");

  await mo.goTo("school", "device");
  await mo.on("own-device");
  const phone = await newDevice(t);
  await phone.on("first");
  await phone.tap("first-as");
  await phone.on("first-as");
  await takesIn(phone, await shownCode(mo));
  await phone.type("pin", PIN);
  await phone.type("pin-twice", PIN);
  await phone.tap("begin");
  await phone.on("own-device");
  await takesIn(mo, await shownCode(phone));
  await mo.on("device-vouch");
  const spoken = await phone.says("own-code");
  assert.equal(await mo.says("applicant-code"), spoken);
  await mo.sign();
  await mo.on("device-vouched");
  await takesIn(phone, await shownCode(mo));
  await phone.on("school-answer");
  await phone.sign();
  await phone.on("device-back");
  await takesIn(mo, await shownCode(phone));
  await mo.on("school-answer");
  await mo.sign();
  await mo.on("school");
  await phone.tap("device-done");
  await phone.on("school");
  assert.match(await phone.page.locator(".over").innerText(), /Pilot/, "the same person, the same role");
  await carried(mo, phone);

  // Lost. Its person ends its key from the device that is left.
  await mo.goTo("school");
  await mo.on("school");
  const [me] = await mo.named("member-", `:has-text("${MO}")`);
  await mo.tap(me);
  await mo.on("member");
  await mo.tap(`to-key-end-${spoken}`);
  await mo.on("key-end");
  await mo.sign();
  assert.equal((await mo.fault()).kind, "end-reason");
  await mo.type("end-reason", "Lost at the field on Sunday");
  await mo.sign();
  await mo.on("member");
  await mo.page.locator(`[data-test="device-${spoken}"][data-ended="true"]`).waitFor();

  await carried(mo, root);

  // Whoever found it knows the PIN, and signs that all was looked at and is well.
  const state = async (pilot) => (await pilot.ask("machine", { id: machine })).card.verdict.state;
  walked(phone.here, machine);
  assert.equal(await state(phone), "limited", "there nobody has told it yet");
  await carried(phone, root);
  assert.equal(await state(root), "grounded", "nobody looked whose word counts");
});
