// Just enough of WebDriver (W3C Recommendation, https://www.w3.org/TR/webdriver2/) to use a window as a person does.
import { DEADLINE, until } from "./world.mjs";

const ELEMENT = "element-6066-11e4-a52e-4f735466cecf"; // the standard's own name for a reference

export class Driver {
  static async open(port, capabilities) {
    const at = `http://127.0.0.1:${port}`;
    await until("the driver", () => fetch(`${at}/status`).then((answer) => answer.ok, () => false));
    const { sessionId } = await command("POST", `${at}/session`, { capabilities: { alwaysMatch: capabilities } });
    return new Driver(`${at}/session/${sessionId}`);
  }

  constructor(session) {
    this.session = session;
  }

  close = () => command("DELETE", this.session);

  run = (script, ...args) => command("POST", `${this.session}/execute/sync`, { script, args });

  picture = () => command("GET", `${this.session}/screenshot`);

  size = (width, height) => command("POST", `${this.session}/window/rect`, { width, height });

  /** The elements of a selector that are there now. */
  async all(selector) {
    const found = await command("POST", `${this.session}/elements`, { using: "css selector", value: selector });
    return found.map((reference) => new Element(this, reference));
  }

  /** The first element of a selector, as soon as it is there. */
  one = (selector) => until(selector, async () => (await this.all(selector))[0]);

  /** A finger or a mouse button that goes down on an element, or up again. */
  press = (element) =>
    this.#pointer([
      { type: "pointerMove", origin: element.reference, x: 0, y: 0, duration: 0 },
      { type: "pointerDown", button: 0 },
    ]);

  release = () => this.#pointer([{ type: "pointerUp", button: 0 }]);

  #pointer = (actions) =>
    command("POST", `${this.session}/actions`, { actions: [{ type: "pointer", id: "hand", actions }] });
}

class Element {
  constructor(driver, reference) {
    this.reference = reference;
    this.at = `${driver.session}/element/${reference[ELEMENT]}`;
  }

  click = () => command("POST", `${this.at}/click`, {});
  clear = () => command("POST", `${this.at}/clear`, {});
  type = (text) => command("POST", `${this.at}/value`, { text });
  text = () => command("GET", `${this.at}/text`);
  attribute = (name) => command("GET", `${this.at}/attribute/${name}`);
}

async function command(method, address, body) {
  // An app that doesn't come up leaves its driver silent.
  const signal = AbortSignal.timeout(DEADLINE);
  const answer = await fetch(address, { method, signal, ...(body ? { body: JSON.stringify(body) } : {}) });
  const { value } = await answer.json();
  if (!answer.ok) throw new Error(`${value.error}: ${value.message}`);
  return value;
}
