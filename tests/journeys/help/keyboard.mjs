// A person who has only the keyboard: everything is reached by Tab, in the order of the page.
import assert from "node:assert/strict";

const MOST_STEPS = 120;

export class Keyboard {
  constructor(page) {
    this.page = page;
  }

  focused() {
    return this.page.evaluate(() => document.activeElement?.dataset?.test);
  }

  /** Tabs to what carries the name; what is reached must show that it is. */
  async reach(test) {
    for (let step = 0; step < MOST_STEPS; step++) {
      if ((await this.focused()) === test) return this.#isShown(test);
      await this.page.keyboard.press("Tab");
    }
    assert.fail(`The keyboard doesn't reach ${test}`);
  }

  async #isShown(test) {
    const ring = await this.page.evaluate(() => {
      const shown = document.activeElement.closest(".choice, .tool, .file") ?? document.activeElement;
      return [shown, document.activeElement].some((element) => {
        const { outlineStyle, outlineWidth } = getComputedStyle(element);
        return outlineStyle !== "none" && parseFloat(outlineWidth) >= 2;
      });
    });
    assert.ok(ring, `${test} shows that the keyboard is there`);
  }

  async fill(test, text) {
    await this.reach(test);
    await this.page.keyboard.type(text);
  }

  async use(test, key) {
    await this.reach(test);
    await this.page.keyboard.press(key);
  }

  async press(key) {
    await this.page.keyboard.press(key);
  }
}
