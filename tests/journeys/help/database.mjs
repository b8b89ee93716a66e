// The database as another program sees it: what is really on the disk, and time that passed.
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const reader = fileURLToPath(new URL("database.py", import.meta.url));

const run = (world, ...what) =>
  String(execFileSync("python3", [reader, join(world.data, "witnessmark.db"), ...what]));

/** What was done in walks so far, oldest first. */
export const steps = (world) => JSON.parse(run(world, "steps"));

/** Nobody touched the app for so long. The program must be stopped meanwhile. */
export const away = (world, minutes) => run(world, "away", String(minutes));
