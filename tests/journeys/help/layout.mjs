// What an eye and a thumb need, measured on the page as it is laid out.

/** Waits until the page has come to rest: no style is on its way to another. */
export const settled = (page) =>
  page.evaluate(async () => {
    const frame = () => new Promise(requestAnimationFrame);
    for (let still = 0; still < 3; still++) {
      await frame();
      const ends = ({ effect, playState }) => playState === "running" && effect.getComputedTiming().iterations !== Infinity;
      if (document.getAnimations().some(ends)) still = -1;
    }
  });

/** What can be scrolled sideways, though nothing should be. */
export const sideways = (page) =>
  page.evaluate(() => {
    const wide = [...document.querySelectorAll("*")].filter((element) => {
      const { overflowX } = getComputedStyle(element);
      const scrolls = element === document.documentElement || overflowX === "auto" || overflowX === "scroll";
      return scrolls && element.scrollWidth > element.clientWidth + 1;
    });
    const past = [...document.querySelectorAll("body *")].filter((element) => {
      const box = element.getBoundingClientRect();
      return box.right > innerWidth + 1 && box.width > 1 && !element.closest("svg") && element.checkVisibility();
    });
    return [...wide, ...past].map((element) => element.outerHTML.slice(0, 120));
  });

/** Text that its own box cuts off. */
export const cut = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("button, .button, .tool, label, h1, h2, p, .digits:not(.pin), select")]
      .filter((element) => element.checkVisibility() && !element.classList.contains("unseen"))
      .filter((element) => element.scrollWidth > element.clientWidth + 2 && element.clientWidth > 0)
      .map((element) => `${element.outerHTML.slice(0, 120)}: ${element.scrollWidth} in ${element.clientWidth}`),
  );

/** Short words that had to break in two: letters one under the other can't be read. */
export const broken = (page) =>
  page.evaluate(() => {
    const LONGEST = 8; // a longer one may break where the screen is narrow
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found = [];
    while (texts.nextNode()) {
      const text = texts.currentNode;
      if (!text.parentElement.checkVisibility() || text.parentElement.closest(".unseen, .mono, textarea, .over-paint")) continue;
      for (const { 0: word, index } of text.data.matchAll(/[\p{L}\p{N}]+/gu)) {
        const range = document.createRange();
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (word.length <= LONGEST && lines.size > 1) found.push(`${word} in ${text.parentElement.outerHTML.slice(0, 100)}`);
      }
    }
    return found;
  });

/** What acts and is smaller than a gloved finger needs: 44 px, and 56 px high for answers. */
export const tooSmall = (page) =>
  page.evaluate(() => {
    // A link within a sentence is as high as its line; that a row of its own isn't.
    const inSentence = (element) =>
      element.matches("a") &&
      getComputedStyle(element).display === "inline" &&
      [...element.parentElement.childNodes].some((node) => node !== element && node.textContent.trim());
    const acting = [...document.querySelectorAll("a[href], button, summary, select, input, textarea")]
      .filter((element) => element.checkVisibility() && !inSentence(element))
      .map((element) => (element.matches("input") ? (element.closest("label") ?? element) : element));
    return acting.flatMap((element) => {
      const { width, height } = element.getBoundingClientRect();
      const least = element.classList.contains("answer") ? 56 : 44;
      const small = width < 43.5 || height < least - 0.5;
      return small ? [`${element.outerHTML.slice(0, 160)}: ${Math.round(width)} × ${Math.round(height)}`] : [];
    });
  });

/** What acts and can't be reached: something else lies over it, wherever the page is scrolled to. */
export const covered = (page) =>
  page.evaluate(() => {
    const modal = document.querySelector("dialog[open]");
    const acting = [...(modal ?? document).querySelectorAll("a[href], button, summary, select, label.tool, input:not(.unseen), textarea")];
    return acting
      .filter((element) => element.checkVisibility())
      .flatMap((element) => {
        element.scrollIntoView({ block: "center" });
        const box = element.getClientRects()[0];
        const at = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
        const hit = at && (element.contains(at) || at.contains(element) || at.closest("label")?.contains(element));
        return hit ? [] : [`${element.outerHTML.slice(0, 120)} under ${at?.outerHTML.slice(0, 80)}`];
      });
  });

/** What must be read before a point is answered, and isn't whole in sight without scrolling; under a sheet it needn't be. */
export const outOfSight = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('[data-screen="point"] main:not(:has(.nuts, dialog[open])) :is(h1, .critical, .caution, .look-for, .unconfirmed[data-test])')].flatMap((element) => {
      const box = element.getBoundingClientRect();
      const { body } = document;
      const boxed = ({ display, overflowY }) => display !== "contents" && overflowY === "auto";
      const scrolls = (at) => (at === body || boxed(getComputedStyle(at)) ? at : scrolls(at.parentElement));
      const sight = scrolls(element).getBoundingClientRect();
      const seen = box.top >= sight.top - 1 && box.bottom <= Math.min(sight.bottom, innerHeight) + 1;
      return seen ? [] : [`${element.textContent.slice(0, 80)}: ${Math.round(box.top)}–${Math.round(box.bottom)} in ${Math.round(sight.top)}–${Math.round(sight.bottom)}`];
    }),
  );

/** What would move though a person asked for no motion; how long to hold is the one thing that must be seen. */
export const moving = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("*")]
      .filter((element) => !element.matches(".over-paint"))
      .filter((element) => {
        const { animationName, transitionDuration } = getComputedStyle(element);
        return animationName !== "none" || transitionDuration.split(", ").some((time) => parseFloat(time) > 0);
      })
      .map((element) => element.outerHTML.slice(0, 120)),
  );
