// What the marks of the charts mean: those that there are.
import type { ComponentChildren } from "preact";
import type { TrendView } from "../../types";
import { t } from "../../words";

export function ChartKey({ trends }: { trends: TrendView[] }) {
  const some = (has: (trend: TrendView) => boolean) => trends.some(has);
  const numbers = trends.filter(({ grades }) => grades.length === 0);
  const entries: [boolean, string, ComponentChildren][] = [
    [numbers.length > 0, t("drawn-reading"), <circle class="ink" cx="24" cy="12" r="5" />],
    [some(({ points }) => points.some(({ far_off }) => far_off)), t("drawn-far-off"), <path class="hollow" d="M24 5L31 12L24 19L17 12Z" />],
    [some(({ band }) => Boolean(band)), t("drawn-band"), <path class="within" d="M2 4H46V20H2Z" />],
    [some(({ band }) => band?.limit != null && band.confirmed), t("drawn-limit"), <path class="limit" d="M2 12H46" />],
    [some(({ band }) => band?.limit != null && !band.confirmed), t("drawn-limit-unconfirmed"), <path class="limit unsure" d="M2 12H46" />],
    [some(({ line, direction }) => line !== null && direction !== "neither"), t("drawn-line"), <><path class="room" d="M2 10L46 2V18L2 18Z" /><path class="line" d="M2 14L46 9" /></>],
    [some(({ line, direction }) => line !== null && direction === "neither"), t("drawn-neither"), <><path class="room plain" d="M2 10L46 2V18L2 18Z" /><path class="line plain" d="M2 14L46 9" /></>],
    [some(({ reaches }) => Boolean(reaches)), t("drawn-reach"), <><path class="limit" d="M2 6H46" /><path class="line told" d="M2 20L30 6" /><path class="reach" d="M22 6H40" /></>],
    [some(({ change }) => Boolean(change)), t("drawn-change"), <path class="change" d="M2 16H22V7H46" />],
    [some(({ marks }) => marks.length > 0), t("drawn-mark"), <path class="line" d="M24 20V8" />],
  ];
  return (
    <details class="chart-key">
      <summary data-test="chart-key">{t("drawn-title")}</summary>
      <ul>
        {entries.filter(([there]) => there).map(([, words, drawing]) => (
          <li key={words}>
            <svg viewBox="0 0 48 24" aria-hidden="true">{drawing}</svg>
            <span class="grow">{words}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
