// Debian's Chromium; a page that says anything wrong fails its journey.
import { after } from "node:test";
import { chromium } from "playwright-core";
import { DEADLINE } from "./world.mjs";

export const PHONE = { width: 390, height: 844 };
export const WIDE = { width: 1280, height: 800 };

const running = new Map();
after(() => Promise.all([...running.values()].map(async (browser) => (await browser).close())));

/** One browser for all journeys of a file; another where letters are larger, as a person sets it. */
function browser(letters) {
  if (!running.has(letters)) {
    // Debian's build finds no sandbox for root, nor much shared memory in a container.
    const args = ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"];
    if (letters !== 1) args.push(`--blink-settings=defaultFontSize=${16 * letters}`);
    running.set(letters, chromium.launch({ executablePath: "/usr/bin/chromium", args }));
  }
  return running.get(letters);
}

/** A browser window of its own, as a phone has it unless told otherwise. */
export async function browse(t, { viewport = PHONE, colorScheme = "light", letters = 1, locale = "en-GB" } = {}) {
  const context = await (await browser(letters)).newContext({ viewport, colorScheme, locale, reducedMotion: "reduce" });
  context.setDefaultTimeout(DEADLINE);
  const wrong = [];
  context.on("weberror", (error) => wrong.push(String(error.error())));
  t.after(async () => {
    await context.close();
    if (wrong.length > 0) throw new Error(`The page failed: ${wrong.join("; ")}`);
  });
  return context;
}
