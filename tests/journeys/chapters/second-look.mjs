// A second pair of eyes on a phone of their own, with no network: codes go across as text or as a picture.
import assert from "node:assert/strict";
import { PIN } from "../help/pilot.mjs";

export const INSTRUCTOR = { name: "Ida Sorrel", pin: "161803" };

/** What the owner's phone shows: the code as text and as a picture. */
export async function asks(owner) {
  await owner.tap("job-second");
  await owner.on("second");
  const picture = await owner.of("code").screenshot();
  return { picture, text: await shownText(owner) };
}

async function shownText(pilot) {
  await pilot.tap("code-as-text");
  return pilot.says("code-out");
}

/** Whoever did the work can't be the second pair of eyes. */
export async function samePersonIsRefused(owner, { text }) {
  await owner.goTo("look");
  await takesIn(owner, text);
  assert.ok(await owner.has("own"));
  await owner.tap("joint-head-nuts-serviceable");
  await owner.sign(PIN);
  assert.equal((await owner.fault()).kind, "second-same-person");
  await owner.tap("look-anew");
}

async function takesIn(pilot, text) {
  await pilot.on("look");
  await pilot.type("code-text", text);
  await pilot.tap("code-take");
  await pilot.on("look-joints");
}

/** The instructor reads the code, once as text and once off a picture, looks, and signs; the reply. */
export async function instructorLooks(instructor, { text, picture }) {
  await instructor.tap("to-look");
  await takesIn(instructor, text);
  assert.ok(!(await instructor.has("own")));
  const asked = await instructor.page.locator("h1").innerText();
  await instructor.tap("look-anew");
  await instructor.on("look");
  await instructor.of("code-picture").setInputFiles({ name: "code.png", mimeType: "image/png", buffer: picture });
  await instructor.on("look-joints");
  assert.equal(await instructor.page.locator("h1").innerText(), asked, "the picture says what the text says");

  await instructor.sign(INSTRUCTOR.pin);
  assert.equal((await instructor.fault()).kind, "second-joint-missing");
  await instructor.tap("joint-head-nuts-serviceable");
  await instructor.sign(INSTRUCTOR.pin);
  await instructor.on("look-reply");
  return shownText(instructor);
}

/** The owner takes the reply: the work may be released. */
export async function takesTheReply(owner, machine, reply) {
  await owner.goTo("machine", machine, "second");
  await owner.on("second");
  await owner.type("code-text", reply);
  await owner.tap("code-take");
  await owner.on("machine");
  assert.equal(await owner.attribute("job", "data-ready"), "true");
}
