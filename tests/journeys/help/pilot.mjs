// What a pilot does on the screens, by the names that the screens give for it (see the top of ui/src/app.tsx).
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { BENCH } from "./bench.mjs";
import { until } from "./world.mjs";

/** Invented, like everybody here. */
export const PERSON = "Juno Larch";
export const PIN = "271828";

export class Pilot {
  constructor(page) {
    this.page = page;
  }

  of(test) {
    return this.page.locator(`[data-test="${test}"]`);
  }

  /** Waits for a screen. */
  async on(screen) {
    await this.page.locator(`[data-screen="${screen}"]`).waitFor();
  }

  async tap(test) {
    await this.of(test).click();
  }

  async type(test, text) {
    await this.of(test).fill(text);
  }

  async says(test) {
    return (await this.of(test).innerText()).trim();
  }

  async attribute(test, name) {
    return this.of(test).getAttribute(name);
  }

  async choose(test, value) {
    await this.of(test).selectOption(value);
  }

  async has(test) {
    return (await this.of(test).count()) > 0;
  }

  /** The names that begin so, as soon as there is one. */
  async named(beginning, more = "") {
    const all = this.page.locator(`[data-test^="${beginning}"]${more}`);
    await all.first().waitFor();
    return all.evaluateAll((found) => found.map((one) => one.dataset.test));
  }

  async gone(test) {
    await this.of(test).waitFor({ state: "detached" });
  }

  /** Waits for a fault, and gives what it says. */
  async fault() {
    const note = this.of("fault");
    await note.waitFor();
    return { kind: await note.getAttribute("data-kind"), words: await note.innerText() };
  }

  /** What the core replies: the truth that the screens are held against, and the quick way to prepare. */
  async ask(call, args = {}) {
    const asked = await this.page.evaluate(async ([call, args]) => {
      const response = await fetch("call", {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ call, args }),
      });
      return { ok: response.ok, reply: await response.json() };
    }, [call, args]);
    assert.ok(asked.ok, `${call}: ${JSON.stringify(asked.reply)}`);
    return asked.reply;
  }

  /** Goes to a place by its address. */
  async goTo(...parts) {
    await this.page.evaluate((hash) => (location.hash = hash), "#/" + parts.map(encodeURIComponent).join("/"));
  }

  async begin(name = PERSON, pin = PIN) {
    await this.on("first");
    await this.type("name", name);
    await this.type("pin", pin);
    await this.type("pin-twice", pin);
    await this.tap("begin");
    await this.on("machines");
  }

  /** The point that is on the screen; none on any other screen. */
  point() {
    return /\/point\/([^/]+)$/.exec(decodeURIComponent(new URL(this.page.url()).hash))?.[1];
  }

  /** Answers the point on the screen, and waits until the screen has moved on. */
  answer(means = "serviceable") {
    return this.movesOn(() => this.page.locator(`.answers [data-means="${means}"]`).first().click());
  }

  /** Types a value on the big keys, in a unit, and enters it. */
  async measure(value, unit) {
    await this.key(value, unit);
    await this.movesOn(() => this.tap("enter"));
  }

  async key(value, unit) {
    if (unit) await this.choose("unit", unit);
    while (await this.of("value").inputValue()) await this.tap("key-erase");
    for (const key of value) await this.tap(`key-${key}`);
  }

  /** Does what leads to another point or to the summary, and waits until that is on the screen. */
  async movesOn(deed) {
    const from = this.point();
    await this.page.locator('[data-screen="point"]').evaluate((screen) => (screen.dataset.seen = "yes"));
    await deed();
    await until(`moving on from ${from}`, async () => {
      if (await this.has("fault")) throw new Error(`At ${from}: ${(await this.fault()).words}`);
      return this.page.locator(':is([data-screen="point"], [data-screen="summary"]):not([data-seen])').count();
    });
  }

  /** Answers with good answers, and values that lie in their bands, until a point or the summary comes. */
  async walkTo(target, values = {}) {
    while (this.point() && this.point() !== target) {
      if (await this.has("value")) await this.measure(...values[this.point()]);
      else await this.answer();
    }
  }

  /** The nut whose turn it is, and what the tool is set to for it; none once all have clicked. */
  nut() {
    return this.page.evaluate(BENCH);
  }

  /** A form's signature, without holding. */
  async sign(pin = PIN) {
    await this.type("pin", pin);
    await this.tap("sign");
  }

  /** Taps what gives a file away: its name and its bytes. */
  async download(test) {
    const downloading = this.page.waitForEvent("download");
    await this.tap(test);
    const download = await downloading;
    return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
  }

  /** A finger that stays on the button. */
  async holdToSign() {
    await this.of("hold-to-sign").hover();
    await this.page.mouse.down();
    await this.of("sign-sheet").waitFor();
    await this.page.mouse.up();
  }

  async signWith(pin) {
    await this.type("pin", "");
    for (const key of pin) await this.of("sign-sheet").locator(`[data-test="key-${key}"]`).click();
    await this.tap("sign");
  }
}
