// The school board's page as its server knows it: a browser that has a cookie, and asks. It prepares; it never signs.
import assert from "node:assert/strict";
import { until } from "./world.mjs";

export class BoardPage {
  #cookies = new Map();

  constructor(address) {
    this.address = address;
  }

  async #ask(method, path, body) {
    const answer = await fetch(`${this.address}/desk/${path}`, {
      method,
      headers: {
        origin: this.address,
        cookie: [...this.#cookies].map((pair) => pair.join("=")).join("; "),
        ...(body ? { "content-type": "application/json" } : {}),
      },
      ...(body ? { body: JSON.stringify(body) } : {}),
    });
    for (const set of answer.headers.getSetCookie()) {
      const [, name, value] = /^([^=]+)=([^;]*)/.exec(set);
      this.#cookies.set(name, value);
    }
    const told = await answer.json();
    assert.ok(answer.ok, `${path}: ${JSON.stringify(told)}`);
    return told;
  }

  /** The text of the code with which a device signs in here. */
  async signInCode() {
    const { id, code } = await this.#ask("POST", "sign-in", {});
    this.id = id;
    return code.text;
  }

  /** Waits until a device has said yes. */
  signedIn() {
    // Until then it is told so; afterwards it is told who is there.
    return until("the board to be signed in", async () => (await this.#ask("GET", `sign-in/${this.id}`)).signed_in !== false);
  }

  board() {
    return this.#ask("GET", "board");
  }

  /** The text of the code that has a deferral signed. */
  async prepares(deferral) {
    const asked = { until_hours: null, until_flights: null, until_date: null, ...deferral };
    return (await this.#ask("POST", "prepare/deferral", asked)).code.text;
  }
}
