// Records that come and go as files, and codes of every kind opened from one place.
import assert from "node:assert/strict";
import { test } from "node:test";
import { walked } from "./help/prepared.mjs";
import { admitted, arrives, founded, MO, newDevice, owns, ROOT, takesIn } from "./help/school.mjs";

test("everything given as one file is taken in elsewhere; a line that is no record is told, and the rest counts", async (t) => {
  const root = await arrives(t, ROOT);
  const machine = await owns(root, "Field bramble");
  walked(root.here, machine);
  await root.goTo("settings");
  const { name, bytes } = await root.download("export-all");
  assert.match(name, /\.jsonl$/);

  const mo = await arrives(t, MO);
  await mo.goTo("verify");
  await mo.type("verify-text", `${bytes}no record\n`);
  await mo.tap("verify");
  await mo.tap("take-in");
  await mo.of("taken-in").waitFor();
  const lines = bytes.toString().trimEnd().split("\n").length;
  assert.match(await mo.says("taken-in"), new RegExp(`one line not taken.*Line ${lines + 1}`, "s"));
  assert.equal(
    (await mo.ask("machine", { id: machine })).card.verdict.headline,
    (await root.ask("machine", { id: machine })).card.verdict.headline,
    "the same records, the same verdict",
  );
  await mo.tap("take-in");
  await mo.page.locator('[data-test="taken-in"][data-taken="0"]').waitFor();
});

test("a code leads to where it belongs, whatever it is about", async (t) => {
  const root = await arrives(t, ROOT);
  await founded(root);
  const mo = await arrives(t, MO);
  const { text } = await mo.ask("school-code");
  await root.tap("to-code");
  await root.on("code");
  await takesIn(root, "WM1NOTHING:AAAA");
  assert.equal((await root.fault()).kind, "code-unreadable");
  await takesIn(root, text);
  await root.on("admit-as");
  assert.match(await root.page.locator("h1").innerText(), new RegExp(MO));

  // The answer, opened in the same way.
  const answer = await root.ask("school-admit", { text, role: "pilot", until: null, pin: "271828" });
  await mo.tap("to-code");
  await takesIn(mo, answer.text);
  await mo.on("school-answer");
  await mo.sign();
  await mo.on("school");

  // A member who isn't the root is led to devices of their own, where somebody else's is refused.
  const other = await arrives(t, "Ida Sorrel");
  const theirs = await other.ask("school-code");
  await mo.goTo("code");
  await takesIn(mo, theirs.text);
  await mo.on("device-vouch");
  await mo.sign();
  assert.equal((await mo.fault()).kind, "not-your-device");
});

test("a first start as somebody who has a device takes only that device's own code", async (t) => {
  const mo = await arrives(t, MO);
  const root = await arrives(t, ROOT);
  await founded(root);
  await admitted(root, mo, "pilot");
  const { text } = await mo.ask("school-code");
  const { text: answer } = await root.ask("school-admit", { text, role: "pilot", until: null, pin: "271828" });
  const phone = await newDevice(t);
  await phone.tap("first-as");
  await phone.on("first-as");
  await takesIn(phone, answer);
  assert.match((await phone.fault()).words, /not what your other device shows/);
  await takesIn(phone, text);
  await phone.type("pin", "271828");
  await phone.type("pin-twice", "999999");
  await phone.tap("begin");
  assert.equal((await phone.fault()).kind, "pins-differ");
  await phone.tap("first-as-anew");
  await phone.of("code-text").waitFor();
});
