// Every word of the screens' own, from the languages' Fluent files.
import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";
import { signal } from "@preact/signals";

const FALLBACK = "en";

const bundles = new Map<string, FluentBundle>();

/** Takes Fluent files by path: the language is the folder's name. */
export function learn(files: Record<string, string>) {
  for (const [path, text] of Object.entries(files)) {
    const named = path.split("/").at(-2) ?? FALLBACK;
    // Isolation marks around every variable would stand between a number and its unit.
    const bundle = bundles.get(named) ?? new FluentBundle(named, { useIsolating: false });
    bundle.addResource(new FluentResource(text));
    bundles.set(named, bundle);
  }
}

learn(import.meta.glob<string>("../../shared/catalogue/texts/*/ui.ftl", { query: "?raw", import: "default", eager: true }));

export const language = signal(FALLBACK);

/** Chooses the language that the core speaks; without words of the screens' own in it they stay English. */
export function speak(wanted: string) {
  language.value = bundles.has(wanted) ? wanted : FALLBACK;
  document.documentElement.lang = language.value;
}

/** A text in the language in use; a text that is missing there is said in English. */
export function t(key: string, values: Record<string, FluentVariable> = {}): string {
  for (const bundle of [bundles.get(language.value), bundles.get(FALLBACK)]) {
    const message = bundle?.getMessage(key);
    if (bundle && message?.value) return bundle.formatPattern(message.value, values);
  }
  return key;
}

/** The languages that the screens have words in. */
export const languages = (): string[] => [...bundles.keys()].sort();

/** A language's name in that language, from its own texts; by the platform where those don't say. */
export function languageName(code: string): string {
  const own = bundles.get(code)?.getMessage("language-name")?.value;
  if (typeof own === "string") return own;
  try {
    return new Intl.DisplayNames([code], { type: "language" }).of(code) ?? code;
  } catch {
    return code;
  }
}

/** A number as the language writes it, with nothing between the thousands: as it is typed. */
export function figure(value: number): string {
  return new Intl.NumberFormat(language.value, { useGrouping: false, maximumFractionDigits: 9 }).format(value);
}

/** The language's decimal mark. */
export function decimalMark(): string {
  return new Intl.NumberFormat(language.value).formatToParts(0.5).find(({ type }) => type === "decimal")?.value ?? ".";
}

const CHOICE = "language";

/** The language that this browser's person wants, among those there are: chosen here before, or else the browser's own. */
export function wishedLanguage(there: string[]): string | undefined {
  const wishes = [keptChoice(), ...navigator.languages.map((tag) => tag.split("-")[0])];
  return wishes.find((wish) => wish && there.includes(wish)) ?? undefined;
}

/** Keeps the choice in this browser, where it keeps anything. */
export function keepLanguage(code: string) {
  try {
    localStorage.setItem(CHOICE, code);
  } catch {
    return;
  }
}

function keptChoice(): string | null {
  try {
    return localStorage.getItem(CHOICE);
  } catch {
    return null;
  }
}
