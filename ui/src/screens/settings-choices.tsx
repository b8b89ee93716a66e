// What a person chooses for this device. Each choice holds at once, and nothing typed elsewhere is lost by it.
import { useState } from "preact/hooks";
import { canRead } from "../aloud";
import { useDraft } from "../drafts";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import { Field, numberOf } from "../parts/field";
import { choose, opened, start, type Choice } from "../state";
import { typedOf } from "../typed";
import type { Start, Unit } from "../types";
import { type Kind, KINDS, unitsOf } from "../units";
import { unitWords } from "../spoken";
import { keepLanguage, language, languageName, t } from "../words";

export function Choices({ now }: { now: Start }) {
  const [kept, setKept] = useState(false);
  // Shown as chosen while it is on its way; as it is again, where it isn't taken.
  const [wish, setWish] = useState<Choice>({});
  const shown = { ...now, ...wish };
  const { busy, fault, act } = useAct();
  const keep = (choice: () => Choice, done?: () => void) =>
    act(async () => {
      setKept(false);
      try {
        const chosen = choice();
        setWish(chosen);
        opened(await choose(start.value ?? now, chosen));
        done?.();
        setKept(true);
      } finally {
        setWish({});
      }
    });
  return (
    <section aria-labelledby="choices" class="choices-of-device">
      <h2 id="choices">{t("settings-choices")}</h2>
      <Language now={shown} onLanguage={(code) => (keepLanguage(code), keep(() => ({ language: code })))} />
      <Aloud now={shown} onAloud={(read_aloud) => keep(() => ({ read_aloud }))} />
      <Units now={shown} onUnit={(kind, unit) => keep(() => ({ units: { ...(start.value ?? now).units, [kind]: unit } }))} />
      <Patience now={now} busy={busy} onKeep={keep} />
      <FaultNote fault={fault} />
      <p role="status" data-test="settings-kept">{kept && t("settings-kept")}</p>
    </section>
  );
}

export function Language({ now, onLanguage }: { now: Start; onLanguage: (code: string) => void }) {
  return (
    <label class="field">
      {t("settings-language")}
      <select value={now.language} onChange={(event) => onLanguage(event.currentTarget.value)} data-test="language">
        {now.languages.map((code) => (
          <option key={code} value={code} lang={code}>{languageName(code)}</option>
        ))}
      </select>
    </label>
  );
}

function Aloud({ now, onAloud }: { now: Start; onAloud: (read: boolean) => void }) {
  if (!canRead.value) return <p class="soft" data-test="no-voice">{t("settings-no-voice", { language: languageName(language.value) })}</p>;
  return (
    <label class="choice switch">
      <input type="checkbox" role="switch" checked={now.read_aloud} onChange={(event) => onAloud(event.currentTarget.checked)} data-test="settings-aloud" />
      <span class="grow">{t("settings-aloud")} <span class="block soft">{t("settings-aloud-what")}</span></span>
    </label>
  );
}

/** The data sheet's own unit of torque, where nobody chose another. */
const SHEET = "";

function Units({ now, onUnit }: { now: Start; onUnit: (kind: Kind, unit: Unit | null) => void }) {
  return (
    <fieldset class="units-of-person">
      <legend>{t("settings-units")}</legend>
      <p class="soft">{t("settings-units-what")}</p>
      <div class="beside">
        {KINDS.map((kind) => (
          <label key={kind} class="field">
            {t(`settings-unit-${kind}`)}
            <select value={now.units[kind] ?? SHEET} onChange={(event) => onUnit(kind, (event.currentTarget.value || null) as Unit | null)} data-test={`unit-${kind}`}>
              {kind === "torque" && <option value={SHEET}>{t("settings-unit-sheet")}</option>}
              {unitsOf(kind).map(({ code, sign }) => (
                <option key={code} value={code}>{t("settings-unit-option", { sign, words: unitWords(code, 10) })}</option>
              ))}
            </select>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function minutesOf(typed: string): number {
  const minutes = numberOf(typed);
  if (minutes === null || !Number.isInteger(minutes) || minutes < 0)
    throw { kind: "no-number", message: t("settings-no-minutes", { typed }), hint: t("settings-no-minutes-hint") };
  return minutes;
}

function Patience({ now, busy, onKeep }: { now: Start; busy: boolean; onKeep: (choice: () => Choice, done: () => void) => void }) {
  const [patience, setPatience, done] = useDraft("settings/patience", typedOf(now.patience_minutes));
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onKeep(() => ({ patience_minutes: minutesOf(patience) }), done);
      }}
    >
      <Field
        words={t("settings-patience")}
        hint={t("settings-patience-hint")}
        value={patience}
        onValue={setPatience}
        test="patience"
        input={{ inputMode: "numeric" }}
      />
      <button type="submit" class="small" aria-disabled={busy} data-test="settings-keep">{t("settings-keep")}</button>
    </form>
  );
}
