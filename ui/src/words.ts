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

/** Chooses the language that the core speaks. */
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

/** A language's name in that language. */
export function languageName(code: string): string {
  return new Intl.DisplayNames([code], { type: "language" }).of(code) ?? code;
}
