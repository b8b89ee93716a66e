// The screens over loopback, and stopping them as a phone dies or a person ends them.
import { createInterface } from "node:readline";
import { end, program, start } from "./world.mjs";

/** Starts `serve-ui` in a world; `port` to come back where it was. */
export async function serve(world, port = 0) {
  const child = start(program, ["--json", "serve-ui", "--port", String(port)], {
    env: world.env,
    stdio: ["ignore", "pipe", "inherit"],
  });
  const line = await new Promise((resolve, reject) => {
    createInterface({ input: child.stdout }).once("line", resolve);
    child.once("exit", (code) => reject(new Error(`serve-ui ended at once (${code})`)));
  });
  const address = new URL(JSON.parse(line).address);
  world.close = () => end(child);
  return {
    address: String(address),
    port: Number(address.port),
    stop: () => end(child),
    die: () => end(child, "SIGKILL"),
  };
}
