// Debian's Chromium, one for all journeys of a file; a page that says anything wrong fails its journey.
import { after } from "node:test";
import { chromium } from "playwright-core";
import { DEADLINE } from "./world.mjs";

export const PHONE = { width: 390, height: 844 };
export const WIDE = { width: 1280, height: 800 };

let running;
after(async () => (await running)?.close());

/** A browser window of its own, as a phone has it unless told otherwise. */
export async function browse(t, { viewport = PHONE, colorScheme = "light", ...more } = {}) {
  running ??= chromium.launch({
    executablePath: "/usr/bin/chromium",
    // Debian's build finds no sandbox for root, nor much shared memory in a container.
    args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
  });
  const browser = await running;
  const context = await browser.newContext({ viewport, colorScheme, reducedMotion: "reduce", ...more });
  context.setDefaultTimeout(DEADLINE);
  const wrong = [];
  context.on("weberror", (error) => wrong.push(String(error.error())));
  t.after(async () => {
    await context.close();
    if (wrong.length > 0) throw new Error(`The page failed: ${wrong.join("; ")}`);
  });
  return context;
}
