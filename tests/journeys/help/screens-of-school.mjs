// The screens of a school, each in every state that looks different, and the way to them; no server is needed.
import { PIN } from "./pilot.mjs";
import { sheet } from "./publication.mjs";
import { fit, tooled, walked, worked } from "./prepared.mjs";
import { admitted, again, arrives, carried, founded, IDA, MO, newDevice, owns, ROOT, takesIn } from "./school.mjs";
import { place } from "./ways.mjs";

/** A school in which something of everything is: seen by its root, by a pilot, and by somebody in none. */
export async function populateSchool(t, looks) {
  const root = await arrives(t, ROOT, looks);
  await owns(root, "Field bramble");
  await founded(root);
  const mo = await arrives(t, MO, looks);
  await admitted(root, mo, "pilot", "2099-12-31");
  const machine = await owns(mo, "Hill bramble");
  walked(mo.here, machine, { "cage-net": "torn" });
  const ida = await arrives(t, IDA, looks);
  await admitted(root, ida, "mechanic");
  const bench = fit(ida.here, "Orchard bramble", IDA);
  tooled(ida.here);
  worked(ida.here, bench, ["head-retorqued"], { looked: true });
  for (const member of [mo, ida]) await carried(member, root);
  await publishes(root);
  await leaves(t, root, looks);
  const nobody = await arrives(t, "Wren Sedge", looks);
  const { text: introduction } = await nobody.ask("school-code");
  const members = (await root.ask("school")).members;
  const person = (name) => members.find((member) => member.name === name);
  const file = (await mo.ask("export-all", {})).text;
  await again(root);
  return { root, mo, nobody, fresh: await newDevice(t, looks), introduction, machine, bench, mo_person: person(MO).person, mo_device: person(MO).devices[0].device, file };
}

/** Published, and published anew. */
async function publishes(root) {
  for (const note of ["For the summer course", "Its start corrected"])
    await root.ask("publish", { title: "Engines of the course", files: [{ path: "engines/wisp-80.toml", text: `${sheet()}\n# ${note}\n` }], note, pin: PIN });
}

/** Somebody who was a member, and whose phone was lost before. */
async function leaves(t, root, looks) {
  const gone = await arrives(t, "Rowan Reed", looks);
  await admitted(root, gone, "viewer");
  const { members } = await root.ask("school");
  const { person, devices } = members.find(({ name }) => name === "Rowan Reed");
  await root.ask("key-end", { device: devices[0].device, reason: "Lost in the reeds", pin: PIN });
  await root.ask("school-end", { person, reason: "Moved away", pin: PIN });
}

const of = (who, show) => async (people) => {
  const pilot = people[who];
  await show(pilot, people);
  return pilot;
};

const chosen = async (root, people) => {
  await root.goTo("school", "admit");
  await root.page.locator('[data-screen^="admit"]').waitFor();
  if (await root.has("admit-anew")) await root.tap("admit-anew");
  await root.on("admit");
  await takesIn(root, people.introduction);
  await root.on("admit-as");
};

const BROKEN = [
  { name: "wisp-80.toml", text: sheet({ faulty: true }) },
  { name: "course.toml", text: "[[point]]\nid = course\n" },
];

const chooses = async (root, files) => {
  await place("publish", "school", "publish")(root, {});
  await root.of("publish-files").setInputFiles(files.map(({ name, text }) => ({ name, mimeType: "text/plain", buffer: Buffer.from(text) })));
  await root.of("publish-preview").waitFor();
};

export const SCHOOL_SCREENS = [
  ["first-as", of("fresh", async (fresh) => {
    await fresh.goTo("again");
    await fresh.on("first-as");
  })],
  ["school-none", of("nobody", place("school-none", "school"))],
  ["school-found", of("nobody", async (nobody) => {
    await place("school-found", "school", "found")(nobody, {});
    await nobody.sign();
    await nobody.fault();
  })],
  ["school-join", of("nobody", place("school-join", "school", "join"))],
  ["school-address", of("nobody", async (nobody) => {
    await place("school-address", "school", "address")(nobody, {});
    await nobody.type("address", "here");
    await nobody.tap("address-look");
    await nobody.fault();
  })],
  ["own-device", of("nobody", place("own-device", "school", "device"))],
  ["board-none", of("nobody", place("board", "board"))],
  ["machines-of-member", of("mo", place("machines"))],
  ["school-of-pilot", of("mo", place("school", "school"))],
  ["machine-under-school", of("mo", async (mo, { machine }) => {
    await place("machine", "machine", machine)(mo, {});
    await mo.of("to-enrol").scrollIntoViewIfNeeded();
  })],
  ["enrol-out", of("mo", (mo, { machine }) => place("enrol", "machine", machine, "school")(mo, {}))],
  ["defer-not-entitled", of("mo", async (mo, { machine }) => {
    await place("defer", "machine", machine, "defer", "cage-net")(mo, {});
    await mo.type("defer-hours", "50");
    await mo.type("defer-condition", "Solo only");
    await mo.type("defer-reason", "A spare net is on its way");
    await mo.sign();
    await mo.fault();
  })],
  ["school-leave", of("mo", place("school-leave", "school", "leave"))],
  ["server-none", of("mo", place("server", "school", "server"))],
  ["refused-none", of("mo", place("refused", "school", "refused"))],
  ["school-of-root", of("root", place("school", "school"))],
  ["school-of-root-former", of("root", async (root) => {
    await place("school", "school")(root, {});
    await root.tap("members-before");
  })],
  ["member", of("root", (root, { mo_person }) => place("member", "school", "member", mo_person)(root, {}))],
  ["member-role", of("root", (root, { mo_person }) => place("member-role", "school", "member", mo_person, "role")(root, {}))],
  ["member-end", of("root", (root, { mo_person }) => place("member-end", "school", "member", mo_person, "end")(root, {}))],
  ["key-end", of("root", (root, { mo_person, mo_device }) => place("key-end", "school", "member", mo_person, "key", mo_device)(root, {}))],
  ["root-hand", of("root", (root, { mo_person, mo_device }) => place("root-hand", "school", "member", mo_person, "hand", mo_device)(root, {}))],
  ["admit", of("root", place("admit", "school", "admit"))],
  ["admit-as", of("root", chosen)],
  ["admitted", of("root", async (root, people) => {
    await chosen(root, people);
    await root.tap("role-viewer");
    await root.sign();
    await root.on("admitted");
  })],
  ["publish-faults", of("root", (root) => chooses(root, BROKEN))],
  ["publish-good", of("root", async (root) => {
    await root.goTo("school", "publish");
    for (const { name } of BROKEN) if (await root.has(`without-${name}`)) await root.tap(`without-${name}`);
    await chooses(root, [{ name: "wisp-80.toml", text: sheet() }]);
    await root.type("publish-title", "Engines of the course");
    await root.page.locator('[data-test="publish-preview"][data-good="true"]').waitFor();
  })],
  ["board", of("root", place("board", "board"))],
  ["board-filtered", of("root", async (root) => {
    await place("board", "board")(root, {});
    await root.choose("filter-state", "grounded");
    await root.of("filter-second").check();
  })],
  ["look-from-board", of("root", async (root, { bench }) => {
    await root.goTo("look", bench);
    await root.on("look-joints");
  })],
  ["verify-taken-in", of("nobody", async (nobody, { file }) => {
    await place("verify", "verify")(nobody, {});
    await nobody.type("verify-text", `${file}\nno record\n`);
    await nobody.tap("verify");
    await nobody.tap("take-in");
    await nobody.of("taken-in").waitFor();
  })],
];
