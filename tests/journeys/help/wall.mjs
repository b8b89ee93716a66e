// A school with a server, and devices that follow it, all on the command line; the board's page in a browser.
import assert from "node:assert/strict";
import { createInterface } from "node:readline";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { browse } from "./browser.mjs";
import { PIN } from "./pilot.mjs";
import { fit, registered, signed, tooled, walked, worked } from "./prepared.mjs";
import { IDA, MO, ROOT, SCHOOL } from "./school.mjs";
import { end, program, start, until, world } from "./world.mjs";

/** Serves a school from its founding file; `port` to come back where it was. */
export async function serveSchool(t, here, file, port = 0) {
  let child;
  const made = {
    address: "",
    stop: () => end(child),
    async start(at = port) {
      const args = ["--json", "server", "--listen", `127.0.0.1:${at}`, "--school", file];
      child = start(program, args, { env: here.env, stdio: ["ignore", "pipe", "ignore"] });
      const line = await new Promise((resolve, reject) => {
        createInterface({ input: child.stdout }).once("line", resolve);
        child.once("exit", (code) => reject(new Error(`The server ended at once (${code})`)));
      });
      made.address = JSON.parse(line).address;
    },
  };
  here.close = () => end(child);
  await made.start();
  return made;
}

const followed = (here, address, code) => signed(here, "school", "join", address, "--school-code", code);
export const synced = (here) => assert.equal(here.cli("sync").code, 0);

/** The school, its server, its root and two members, each with a device of their own and a machine. */
export async function schoolWithBoard(t) {
  const [root, mo, ida, serving] = [world(t), world(t), world(t), world(t)];
  signed(root, "school", "create", SCHOOL, "--signatory", ROOT);
  const file = join(serving.folder, "school.jsonl");
  assert.equal(root.cli("school", "file", "--to", file).code, 0);
  const server = await serveSchool(t, serving, file);
  const code = root.cli("school", "show").said.school.code;
  followed(root, server.address, code);
  synced(root);
  const machines = {
    fit: fit(mo, "Hill bramble", MO),
    torn: registered(mo, "Shed bramble", MO),
    looked: registered(ida, "Ida's own", IDA),
    never: registered(ida, "Winter bramble", IDA),
  };
  walked(mo, machines.torn, { "cage-net": "torn", "cylinder-base": "wet" });
  tooled(ida);
  worked(ida, machines.looked, ["head-retorqued"], { looked: true });
  for (const [here, name, role] of [[mo, MO, "pilot"], [ida, IDA, "mechanic"]]) {
    followed(here, server.address, code);
    here.cli("sync");
    const { text } = here.cli("school", "code").said;
    signed(root, "school", "admit", text, "--role", role);
    synced(root);
    synced(here);
  }
  synced(root);
  return { root, mo, ida, serving, server, machines, file };
}

/** The board in a browser. */
export class Wall {
  constructor(page) {
    this.page = page;
  }

  of(test) {
    return this.page.locator(`[data-test="${test}"]`);
  }

  async says(test) {
    return (await this.of(test).innerText()).trim();
  }

  row(machine) {
    return this.of(`row-${machine}`);
  }

  /** What the code on the page says. */
  async code() {
    await this.of("code").waitFor();
    return this.of("code-out").textContent();
  }

  /** The sheet that was opened. */
  async on(sheet) {
    await this.page.locator(`[data-test="sheet"][data-sheet="${sheet}"] h2:not(:text("One moment…"))`).waitFor();
  }

  async close() {
    await this.of("close").click();
    await this.of("sheet").waitFor({ state: "detached" });
  }

  async order() {
    const names = await this.page.locator('[data-test^="open-"]').allInnerTexts();
    return names.map((name) => name.trim());
  }
}

export async function opens(t, server, looks) {
  const context = await browse(t, looks);
  const page = await context.newPage();
  await page.goto(server.address);
  const wall = new Wall(page);
  await wall.of("sign-in").waitFor();
  return wall;
}

/** Confirmed by a device, on the command line. */
export async function signsIn(wall, here) {
  signed(here, "school", "sign-in", await wall.code());
  await wall.of("live").waitFor();
}

/** Signs what was prepared, on the command line, and brings it to the server. */
export function signsPrepared(here, text) {
  const file = join(here.folder, "prepared");
  writeFileSync(file, text);
  signed(here, "school", "sign", `@${file}`, "--agreed");
  synced(here);
}

export const live = (wall, state) => until(`a board that is ${state}`, async () => (await wall.of("live").getAttribute("data-state")) === state);
export { PIN };
