// The page's language: this browser's own until somebody chooses another here.
import { keepLanguage, language, languageName, languages, speak, t, wishedLanguage } from "../src/words";

/** What this browser's person wants to read. */
export const wished = (): string => wishedLanguage(languages()) ?? language.value;

/** Chooses at once; what was typed stays, and what the server says is asked for anew. */
export function ChooseLanguage({ again }: { again: () => Promise<unknown> }) {
  const choose = (code: string) => {
    keepLanguage(code);
    speak(code);
    void again();
  };
  return (
    <label class="field tongue">
      {t("settings-language")}
      <select value={language.value} onChange={(event) => choose(event.currentTarget.value)} data-test="language">
        {languages().map((code) => (
          <option key={code} value={code} lang={code}>{languageName(code)}</option>
        ))}
      </select>
    </label>
  );
}
