// The real window, and a pilot in front of it.
import { createServer } from "node:net";
import { BENCH } from "./bench.mjs";
import { PIN } from "./pilot.mjs";
import { Driver } from "./webdriver.mjs";
import { end, shell, start, until } from "./world.mjs";

/** Opens the app's window on a world's data; needs a display. */
export async function openWindow(world) {
  if (!process.env.DISPLAY) throw new Error("The window needs a display; tests/journeys/run.sh gives it one");
  const port = await freePort();
  const child = start("WebKitWebDriver", [`--port=${port}`], {
    env: { ...world.env, TAURI_WEBVIEW_AUTOMATION: "true" },
    stdio: "ignore",
  });
  const driver = await Driver.open(port, {
    browserName: "wry",
    "webkitgtk:browserOptions": { binary: shell, args: [] },
  });
  const pilot = new WindowPilot(driver);
  pilot.close = async () => {
    await driver.close().catch(() => undefined); // gone already
    await end(child);
  };
  world.close = pilot.close;
  return pilot;
}

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer().once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

const named = (test) => `[data-test="${test}"]`;

/** What a pilot does in the window; named as in `pilot.mjs`. */
class WindowPilot {
  constructor(driver) {
    this.driver = driver;
  }

  of = (test) => this.driver.one(named(test));
  on = (screen) => this.driver.one(`[data-screen="${screen}"]`);
  has = async (test) => (await this.driver.all(named(test))).length > 0;
  tap = (test) => this.#touch(named(test), (element) => element.click());
  attribute = async (test, name) => (await this.of(test)).attribute(name);
  named = (beginning, more = "") =>
    until(beginning, async () => {
      const all = await this.driver.all(`[data-test^="${beginning}"]${more}`);
      return all.length > 0 && Promise.all(all.map((one) => one.attribute("data-test")));
    });
  nut = () => this.driver.run(`return ${BENCH}`);
  says = async (test) => (await this.of(test)).text();
  goTo = (...parts) => this.driver.run("location.hash = arguments[0]", "#/" + parts.map(encodeURIComponent).join("/"));

  type = (test, text) =>
    this.#touch(named(test), async (field) => {
      await field.clear();
      await field.type(text);
    });

  /** As soon as it can be done: what is just coming or moving can't be touched yet. */
  #touch = (selector, deed) =>
    until(`${selector} to be touched`, () =>
      this.driver.one(selector).then(deed).then(
        () => true,
        (failed) => {
          if (!/^(element not interactable|stale element reference)/.test(failed.message)) throw failed;
        },
      ),
    );

  async sign(pin = PIN) {
    await this.type("pin", pin);
    await this.tap("sign");
  }

  async signWith(pin) {
    for (const key of pin) await this.#touch(`${named("sign-sheet")} ${named(`key-${key}`)}`, (element) => element.click());
    await this.tap("sign");
  }

  /** The point that is on the screen; none on any other screen. */
  async point() {
    return this.driver.run(String.raw`return (/\/point\/([^/]+)$/.exec(decodeURIComponent(location.hash)) || [])[1] || null`);
  }

  answer(means = "serviceable") {
    return this.movesOn(async () => (await this.driver.one(`.answers [data-means="${means}"]`)).click());
  }

  async measure(value, unit) {
    if (unit) await this.choose("unit", unit);
    for (const key of value) await this.tap(`key-${key}`);
    await this.movesOn(() => this.tap("enter"));
  }

  /** One of a list's options; its value may be no attribute of it. */
  async choose(test, value) {
    const number = await this.driver.run(
      `return [...document.querySelectorAll(arguments[0])].findIndex((option) => option.value === arguments[1])`,
      `[data-test="${test}"] option`,
      value,
    );
    await (await this.driver.all(`[data-test="${test}"] option`))[number].click();
  }

  async movesOn(deed) {
    const from = await this.point();
    await this.driver.run(`document.querySelector('[data-screen="point"]').dataset.seen = "yes"`);
    await deed();
    await until(`moving on from ${from}`, async () => {
      if (await this.has("fault")) throw new Error(`At ${from}: ${await this.says("fault")}`);
      return (await this.driver.all(':is([data-screen="point"], [data-screen="summary"]):not([data-seen])')).length > 0;
    });
  }

  async walkTo(target, values) {
    for (let at = await this.point(); at && at !== target; at = await this.point())
      await ((await this.has("value")) ? this.measure(...values[at]) : this.answer());
  }
}
