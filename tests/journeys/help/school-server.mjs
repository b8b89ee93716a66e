// A school's server on this machine: started from the file that its root gives, stopped, started again where it was.
import { createInterface } from "node:readline";
import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { end, program, start } from "./world.mjs";

/** Serves the school of a root's device. */
export async function schoolServer(t, root) {
  const folder = mkdtempSync(join(tmpdir(), "server-"));
  const [file, data, kept] = ["school.jsonl", "server", "kept"].map((name) => join(folder, name));
  const { text } = await root.ask("school-file");
  writeFileSync(file, text);
  let child;
  let port = 0;
  const made = {
    address: "",
    stop: () => end(child),
    /** All that it has, set aside; it must be stopped meanwhile. */
    keep: () => cpSync(data, kept, { recursive: true }),
    /** As it was when that was set aside: whatever came since, it has forgotten. */
    putBack() {
      rmSync(data, { recursive: true });
      cpSync(kept, data, { recursive: true });
    },
    async start() {
      // Once it has a port it comes back there: devices know it by its address.
      const args = ["--json", "--data", data, "server", "--school", file, "--listen", `127.0.0.1:${port}`];
      child = start(program, args, { env: { ...process.env, HOME: folder }, stdio: ["ignore", "pipe", "ignore"] });
      const line = await new Promise((resolve, reject) => {
        createInterface({ input: child.stdout }).once("line", resolve);
        child.once("exit", (code) => reject(new Error(`The server ended at once (${code})`)));
      });
      made.address = JSON.parse(line).address;
      port = new URL(made.address).port;
    },
  };
  t.after(async () => {
    await made.stop();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  });
  await made.start();
  return made;
}
