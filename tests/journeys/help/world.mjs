// A world of its own for one journey: a data folder, a clock that stands at midday, and the programs to start.
import { execFileSync, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const built = join(process.env.CARGO_TARGET_DIR ?? join(root, "target"), "debug");
export const program = join(built, "witnessmark");
export const shell = join(built, "witnessmark-shell");

/** How long anything may take before a journey gives up, ms; a slow machine gets there in less. */
export const DEADLINE = 30_000;

const children = new Set();
const endAll = () => children.forEach((child) => child.kill("SIGKILL"));
process.on("exit", endAll);
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(1));

/** Starts a program that ends with this process at the latest. */
export function start(command, args, options) {
  const child = spawn(command, args, options);
  children.add(child);
  child.ended = new Promise((resolve) => child.once("exit", resolve));
  child.ended.then(() => children.delete(child));
  return child;
}

/** Ends a program politely, or else at once. */
export async function end(child, signal = "SIGTERM") {
  if (!children.has(child)) return;
  child.kill(signal);
  const last = setTimeout(() => child.kill("SIGKILL"), 10_000);
  await child.ended;
  clearTimeout(last);
}

/** Asks until there is an answer. */
export async function until(what, ask, deadline = DEADLINE) {
  const last = Date.now() + deadline;
  for (;;) {
    const answer = await ask();
    if (answer) return answer;
    if (Date.now() > last) throw new Error(`In vain waited for ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
}

// A journey that crosses midnight would rightly be asked everything again. So the programs live where it
// is between noon and one o'clock now. In a POSIX time zone the sign says how far Greenwich is ahead.
const ahead = 12 - new Date().getUTCHours();
const TZ = `<journey>${-ahead}`;

/** A day as the programs' clock has it, as YYYY-MM-DD; days from today. */
export function day(offset = 0) {
  return new Date(Date.now() + ahead * 3_600_000 + offset * 86_400_000).toISOString().slice(0, 10);
}

/** A world, gone when the test ends. */
export function world(t) {
  const folder = mkdtempSync(join(tmpdir(), "journey-"));
  const data = join(folder, "data");
  const env = { ...process.env, TZ, WITNESSMARK_KEYCHAIN: "off", WITNESSMARK_DATA: data, HOME: folder };
  const made = { folder, data, env, cli: (...args) => cli(env, args) };
  t.after(async () => {
    await made.close?.();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  });
  return made;
}

/** Runs the command line: its exit code, and what it said in JSON. */
function cli(env, args) {
  try {
    return { code: 0, said: read(execFileSync(program, ["--json", ...args], { env, stdio: ["ignore", "pipe", "pipe"] })) };
  } catch (failed) {
    if (failed.status === undefined || failed.status === null) throw failed;
    return { code: failed.status, said: read(failed.stdout), fault: String(failed.stderr) };
  }
}

const read = (out) => (out.length === 0 ? null : JSON.parse(String(out)));
