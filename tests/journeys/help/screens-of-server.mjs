// The screens of a school that has a server, as it stands with it in every way; and the way to them.
import { BoardPage } from "./board-page.mjs";
import { PIN } from "./pilot.mjs";
import { registered, walked } from "./prepared.mjs";
import { arrives, founded, MO, owns, ROOT, takesIn } from "./school.mjs";
import { schoolServer } from "./school-server.mjs";
import { place } from "./ways.mjs";
import { until } from "./world.mjs";

/** A school with a server; somebody waits there to be admitted. */
export async function populateServer(t, looks) {
  const root = await arrives(t, ROOT, looks);
  await founded(root);
  const machine = await owns(root, "Field bramble");
  walked(root.here, machine, { "cage-net": "torn" });
  const server = await schoolServer(t, root);
  const mo = await arrives(t, MO, looks);
  return { root, mo, server, machine, board: new BoardPage(server.address) };
}

/** Follows the server where it is now. */
async function follows(pilot, server) {
  await pilot.ask("school-look", { address: server.address });
  await pilot.ask("school-follow", { address: server.address, pin: PIN });
}

const round = (pilot) => pilot.ask("sync");

/** A round that fails, as it is told on the screen. */
async function roundInVain(pilot, state) {
  await round(pilot).catch(() => undefined);
  await place("server", "school", "server")(pilot, {});
  await pilot.page.locator(`[data-test="sync"][data-state="${state}"]`).waitFor();
}

const on = (who, ...where) => async (people) => {
  await place(...where)(people[who], {});
  return people[who];
};

const whose = (who, show) => async (people) => {
  await show(people[who], people);
  return people[who];
};

/** In this order: each goes on from how the one before left it. */
export const SERVER_SCREENS = [
  ["school-card", whose("mo", async (mo, { server }) => {
    await place("school-address", "school", "address")(mo, {});
    await mo.type("address", server.address);
    await mo.tap("address-look");
    await mo.on("school-card");
  })],
  ["server-waits", whose("mo", async (mo, { server }) => {
    await follows(mo, server);
    await round(mo);
    await place("server", "school", "server")(mo, {});
    await mo.page.locator('[data-state="waits"]').waitFor();
  })],
  ["school-not-admitted", on("mo", "school", "school")],
  ["admit-waiting", whose("root", async (root, { server }) => {
    await follows(root, server);
    await round(root);
    await place("admit", "school", "admit")(root, {});
    await root.named("applicant-");
  })],
  ["server-done", whose("mo", async (mo, { root }) => {
    const [{ text }] = await root.ask("school-waiting");
    await root.ask("school-admit", { text, role: "pilot", until: null, pin: PIN });
    await round(root);
    await round(mo);
    await place("server", "school", "server")(mo, {});
    await mo.page.locator('[data-state="done"]').waitFor();
  })],
  ["receipts", whose("mo", async (mo) => {
    await place("server", "school", "server")(mo, {});
    await mo.tap("receipts");
    await mo.of("receipts-result").waitFor();
  })],
  ["compare", whose("mo", async (mo, { root }) => {
    const { text } = await root.ask("checkpoint-code");
    await place("compare", "school", "compare")(mo, {});
    await mo.type("code-text", text);
    await mo.tap("code-take");
    await mo.of("receipts-result").waitFor();
  })],
  ["machines-in-step", on("mo", "machines")],
  ["school-with-server", on("root", "school", "school")],
  ["desk", whose("root", async (root, { board }) => {
    await place("code", "code")(root, {});
    await takesIn(root, await board.signInCode());
    await root.on("desk");
  })],
  ["desk-done", whose("root", async (root, { board }) => {
    await place("code", "code")(root, {});
    await takesIn(root, await board.signInCode());
    await root.on("desk");
    await root.sign();
    await root.on("desk-done");
    await board.signedIn();
  })],
  ["desk-draft", whose("root", async (root, { board, machine }) => {
    const deferral = { machine, point: "cage-net", until_hours: 45, condition: "Solo only, no more than half throttle", reason: "A spare net is on its way" };
    const code = await until("the board to have the machine", () => board.prepares(deferral).catch(() => null));
    await place("code", "code")(root, {});
    await takesIn(root, code);
    await root.on("desk-draft");
  })],
  ["server-stuck", whose("mo", async (mo) => {
    // Said for the server: it takes whatever this program signs.
    await mo.page.route("**/call", async (route) => {
      if (route.request().postDataJSON().call !== "school") return route.fallback();
      const answer = await route.fetch();
      const view = await answer.json();
      const words = "The record is longer than this server takes. Publish it in parts.";
      view.sync.stuck = [{ record: "0".repeat(64), kind: "Inspection", words }];
      await route.fulfill({ response: answer, json: view });
    });
    await place("server", "school", "server")(mo, {});
    await mo.of("stuck").waitFor();
  })],
  ["machines-stuck", on("mo", "machines")],
  ["server-failed", whose("mo", async (mo, { server }) => {
    await mo.page.unroute("**/call");
    await server.stop();
    server.keep();
    registered(mo.here, "Hill bramble", MO);
    await roundInVain(mo, "failed");
  })],
  ["machines-offline", on("mo", "machines")],
  ["admit-offline", whose("root", async (root) => {
    await place("admit", "school", "admit")(root, {});
    await root.fault();
  })],
  ["server-distrusted", whose("mo", async (mo, { server }) => {
    await server.start();
    await round(mo);
    await server.stop();
    server.putBack();
    await server.start();
    await roundInVain(mo, "distrusted");
  })],
  ["machines-distrusted", on("mo", "machines")],
];
