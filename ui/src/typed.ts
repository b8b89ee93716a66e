// What was typed, as the number that it is; said in words where it is none.
import { numberOf } from "./parts/field";
import type { Quantity } from "./types";
import { figure, t } from "./words";

export function number(typed: string, words: string): number {
  const value = numberOf(typed);
  if (value === null) throw { kind: "no-number", message: t("form-no-number", { words, typed }), hint: t("form-no-number-hint") };
  return value;
}

export function whole(typed: string, words: string): number {
  const value = number(typed, words);
  if (!Number.isInteger(value) || value < 0)
    throw { kind: "no-number", message: t("form-not-whole", { words, typed }), hint: t("form-not-whole-hint") };
  return value;
}

/** A number that is there already, as a person would have typed it; nothing where there is none. */
export const typedOf = (value: number | Quantity | null | undefined): string =>
  value === null || value === undefined ? "" : figure(typeof value === "number" ? value : value.value);

/** Nothing typed is none, not nought. */
export function orNone(typed: string, read: (typed: string) => number): number | null {
  return typed.trim() === "" ? null : read(typed);
}

/** The day here, as date fields write it. */
export function today(): string {
  const now = new Date();
  const two = (count: number) => String(count).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
