// What a machine is made of: its engine's type, and the parts that are fitted to it.
import { Field } from "../parts/field";
import type { Choices, PartView } from "../types";
import { t } from "../words";
import { Invented } from "./machines";
import type { Draft } from "./machine-form";

export function EngineChoice(props: { engines: Choices["engines"]; engine: string; onEngine: (id: string) => void }) {
  return (
    <fieldset>
      <legend>{t("form-engine")}</legend>
      {props.engines.map((engine) => (
        <label key={engine.id} class="choice">
          <input
            type="radio"
            name="engine"
            checked={props.engine === engine.id}
            onChange={() => props.onEngine(engine.id)}
            data-test={`engine-${engine.id}`}
          />
          <span class="grow">
            {engine.name} <span class="block soft">{engine.words}</span>
            {engine.invented && <Invented />}
          </span>
        </label>
      ))}
    </fieldset>
  );
}

interface PartsProps {
  parts: PartView[];
  draft: Draft;
  put: (change: Partial<Draft>) => void;
}

export function Parts({ parts, draft, put }: PartsProps) {
  const toggle = (part: string, fitted: boolean) => {
    const { [part]: serial = "", ...others } = draft.fitted;
    put({ fitted: fitted ? { ...others, [part]: serial } : others });
  };
  return (
    <>
      <fieldset>
        <legend>{t("form-parts")}</legend>
        {parts.filter((part) => part.optional).map((part) => (
          <div key={part.id} class="part">
            <label class="choice">
              <input
                type="checkbox"
                checked={part.id in draft.fitted}
                onChange={(event) => toggle(part.id, event.currentTarget.checked)}
                data-test={`part-${part.id}`}
              />
              <span class="grow">{part.words}</span>
            </label>
            {part.id === "reserve" && "reserve" in draft.fitted && <Repack draft={draft} put={put} />}
          </div>
        ))}
      </fieldset>
      <Serials parts={parts.filter((part) => !part.optional || part.id in draft.fitted)} draft={draft} put={put} />
    </>
  );
}

function Serials({ parts, draft, put }: PartsProps) {
  return (
    <details>
      <summary data-test="serials">{t("form-serials")}</summary>
      {parts.map((part) => (
        <Field
          key={part.id}
          words={part.words}
          value={draft.fitted[part.id] ?? ""}
          onValue={(typed) => put({ fitted: { ...draft.fitted, [part.id]: typed } })}
          test={`serial-${part.id}`}
        />
      ))}
    </details>
  );
}

function Repack({ draft, put }: Pick<PartsProps, "draft" | "put">) {
  return (
    <div class="beside">
      <Field
        words={t("form-repacked")}
        value={draft.repackedOn}
        onValue={(repackedOn) => put({ repackedOn })}
        test="repacked"
        input={{ type: "date" }}
      />
      <Field
        words={t("form-every-days")}
        value={draft.everyDays}
        onValue={(everyDays) => put({ everyDays })}
        test="every-days"
        input={{ inputMode: "numeric" }}
      />
    </div>
  );
}
