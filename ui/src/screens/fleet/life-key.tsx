// What the marks of the curve mean: those that there are.
import type { ComponentChildren } from "preact";
import type { LifeView } from "../../types";
import { t } from "../../words";

export function LifeKey({ life: { survival, fitted, findings } }: { life: LifeView }) {
  const entries: [boolean, string, ComponentChildren][] = [
    [survival.length > 0, t("drawn-steps"), <path class="steps-line" d="M2 5H16V12H32V19H46" />],
    [fitted.length > 0, t("drawn-fitted"), <><path class="room smooth" d="M2 2Q30 4 46 20V23Q20 20 2 6Z" /><path class="line smooth" d="M2 4Q26 8 46 21" /></>],
    [findings.some(({ by }) => by !== null), t("drawn-failed"), <path class="failed" d="M8 12H40M40 5V19" />],
    [findings.some(({ by }) => by === null), t("drawn-whole"), <circle class="whole" cx="24" cy="12" r="5" />],
  ];
  const there = entries.filter(([shown]) => shown);
  if (survival.length === 0) return null;
  return (
    <ul class="chart-key" aria-label={t("drawn-title")}>
      {there.map(([, words, drawing]) => (
        <li key={words}>
          <svg viewBox="0 0 48 24" aria-hidden="true">{drawing}</svg>
          <span class="grow">{words}</span>
        </li>
      ))}
    </ul>
  );
}
