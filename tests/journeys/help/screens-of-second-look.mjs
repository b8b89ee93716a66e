// A second pair of eyes: the screens of the one who asks and of the one who looks.
import { place } from "./ways.mjs";

const [FIRST, OTHER] = [["Mo Tansy", "141421"], ["Ida Sorrel", "161803"]];

/** People of this device who may look; the machine's head nuts seen by one of them. */
async function joined(pilot, people) {
  const known = await pilot.ask("second-people");
  const missing = people.filter(([name]) => !known.some((person) => person.name === name));
  for (const [name, pin] of missing) await pilot.ask("second-person-add", { name, pin });
  return pilot.ask("second-people");
}

const looking = async (pilot, ids) => {
  await pilot.goTo("look");
  await pilot.page.locator('[data-screen^="look"]').waitFor();
  // What was taken in for another screen is kept, as it should be.
  if (await pilot.has("look-anew")) await pilot.tap("look-anew");
  await pilot.on("look");
  await pilot.type("code-text", ids.asked);
  await pilot.tap("code-take");
  await pilot.on("look-joints");
};

export const SECOND = [
  ["machine-to-be-looked-at", place("machine", "machine", "looked")],
  ["second", place("second", "machine", "looked", "second")],
  [
    "second-text",
    async (pilot, ids) => {
      await place("second", "machine", "looked", "second")(pilot, ids);
      await pilot.tap("code-as-text");
      await pilot.type("code-text", "not a code");
      await pilot.tap("code-take");
      await pilot.fault();
    },
  ],
  ["second-here-nobody", place("second-here", "machine", "looked", "second", "here")],
  [
    "second-here",
    async (pilot, ids) => {
      await joined(pilot, [FIRST, OTHER]);
      await place("second-here", "machine", "looked", "second", "here")(pilot, ids);
      const [who] = await pilot.named("who-");
      await pilot.tap(who);
      await pilot.tap("joint-head-nuts-unserviceable");
    },
  ],
  ["look", place("look", "look")],
  ["look-joints", looking],
  [
    "look-reply",
    async (pilot, ids) => {
      await looking(pilot, ids);
      await pilot.tap("joint-head-nuts-serviceable");
      await pilot.sign();
      await pilot.on("look-reply");
    },
  ],
  [
    "machine-looked-at",
    async (pilot, ids) => {
      const [{ device, name }] = await joined(pilot, [FIRST, OTHER]);
      const pin = name === FIRST[0] ? FIRST[1] : OTHER[1];
      const joints = [{ joint: "head-nuts", means: "serviceable", note: "" }];
      await pilot.ask("second-look-here", { machine: ids.looked, device, joints, pin });
      await place("machine", "machine", "looked")(pilot, ids);
    },
  ],
];
