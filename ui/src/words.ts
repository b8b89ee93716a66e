// Every word of the screens' own, from the language's Fluent file.
import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";
import { signal } from "@preact/signals";

const files = import.meta.glob<string>("../../shared/catalogue/texts/*/ui.ftl", {
  query: "?raw",
  import: "default",
  eager: true,
});

const FALLBACK = "en";

const bundles = new Map(
  Object.entries(files).map(([path, text]) => {
    const language = path.split("/").at(-2) ?? FALLBACK;
    // Isolation marks around every variable would stand between a number and its unit.
    const bundle = new FluentBundle(language, { useIsolating: false });
    bundle.addResource(new FluentResource(text));
    return [language, bundle] as const;
  }),
);

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
