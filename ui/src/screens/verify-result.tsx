// What came of checking a file: who signed, and each fault with what to do about it.
import { PaintMark } from "../parts/mark";
import { StateShape } from "../parts/shape";
import type { VerifyView } from "../types";
import { t } from "../words";

export function VerifyResult({ result }: { result: VerifyView }) {
  const state = result.good ? "fit" : "grounded";
  return (
    <section class="verified" data-test="verified" data-good={result.good}>
      <div class="sign">
        <StateShape state={state} size={56} />
        <PaintMark state={state} />
      </div>
      <h2>{result.headline}</h2>
      <p class="soft">{t("verify-records", { count: result.records, machines: result.machines.map((m) => m.words).join(", ") })}</p>
      {result.faults.length > 0 && (
        <ul class="reasons" aria-label={t("verify-faults")}>
          {result.faults.map((fault, index) => (
            <li key={index} class="reason" data-test={`fault-${fault.what}`}>
              <p class="strong">{fault.words}</p>
              <p class="soft">{fault.hint}</p>
              {fault.record && <p class="mono">{fault.record}</p>}
            </li>
          ))}
        </ul>
      )}
      {result.people.length > 0 && (
        <>
          <h3>{t("verify-people")}</h3>
          <p class="soft">{t("verify-people-what")}</p>
          <ul class="findings">
            {result.people.map((person) => (
              <li key={person.id} class="person">
                <span class="strong">{person.words}</span>
                <span class="mono">{person.id}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
