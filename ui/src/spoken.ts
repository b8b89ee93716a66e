// A sentence as a voice reads it: signs and units become words of the language.
import { computed } from "@preact/signals";
import type { Unit } from "./types";
import { KINDS, unitsOf } from "./units";
import { t } from "./words";

/** Signs of what is measured at a machine, beside those that a person chooses among. */
const AT_MACHINES: [sign: string, unit: Unit | "min"][] = [
  ["mm", "mm"], ["in", "in"], ["K", "K"], ["bar", "bar"], ["psi", "psi"], ["V", "V"], ["s", "s"], ["h", "h"], ["min", "min"],
  ["mL", "mL"], ["L/h", "L/h"], ["rpm", "1/min"], ["°", "deg"], ["%", "%"],
];

/** Signs that stand after numbers, longest first, with the units that they are. */
const signs = computed(() => {
  const chosen = KINDS.flatMap(unitsOf).map(({ sign, code }): [string, Unit] => [sign, code]);
  return [...chosen, ...AT_MACHINES].sort(([one], [other]) => other.length - one.length);
});

/** Signs that are words too: before another word they are those. */
const AMBIGUOUS = ["in"];

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
const NUMBER = String.raw`[-−]?\d+(?:[.,]\d+)?`;
const measured = computed(() => new RegExp(`(${NUMBER})(?:\\s*–\\s*(${NUMBER}))?[\\s\\u00a0\\u202f]*(${signs.value.map(([sign]) => escaped(sign) + (AMBIGUOUS.includes(sign) ? "(?!\\s+\\p{L})" : "")).join("|")})(?![\\p{L}\\p{N}])`, "gu"));
const RANGE = new RegExp(`(${NUMBER})\\s*–\\s*(${NUMBER})`, "gu");

/** Codes of which a text could have no name. */
const NAMES: Partial<Record<Unit | "min", string>> = { "%": "percent", "1/min": "per-minute" };

/** A unit in words, as it stands after so many of it. */
export const unitWords = (unit: Unit | "min", count: number) => t(`spoken-unit-${NAMES[unit] ?? unit.replace(/[^A-Za-z0-9]/g, "-")}`, { count });

export function spoken(sentence: string): string {
  return sentence
    .replace(/±\s*/g, `${t("spoken-plus-minus")} `)
    .replace(/≤\s*/g, `${t("spoken-at-most")} `)
    .replace(/≥\s*/g, `${t("spoken-at-least")} `)
    .replace(measured.value, (_, low: string, high: string | undefined, sign: string) => {
      const unit = signs.value.find(([one]) => one === sign)?.[1] ?? "1";
      const number = high ? t("spoken-range", { low, high }) : low;
      return `${number} ${unitWords(unit, Number((high ?? low).replace("−", "-").replace(",", ".")))}`;
    })
    .replace(RANGE, (_, low: string, high: string) => t("spoken-range", { low, high }));
}
