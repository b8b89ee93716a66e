// Those who wait at the server to be admitted.
import { useLoad } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import type { ApplicantView } from "../../types";
import { t } from "../../words";

export function WaitingList({ onChosen }: { onChosen: (who: ApplicantView) => void }) {
  const { value, fault, again } = useLoad("school-waiting", {});
  return (
    <section aria-labelledby="waiting-list">
      <h2 id="waiting-list">{t("waiting-list")}</h2>
      <FaultNote fault={fault} again={again} />
      {!value && !fault && <p class="soft">{t("waiting")}</p>}
      {value?.length === 0 && <p class="soft">{t("waiting-list-none")}</p>}
      {value && value.length > 0 && (
        <ul class="stack">
          {value.map((who) => (
            <li key={who.code}>
              <button type="button" class="applicant" onClick={() => onChosen(who)} data-test={`applicant-${who.code}`}>
                <span class="grow">{who.name}</span>
                <span class="mono">{who.code}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {value && (
        <button type="button" class="as-link" onClick={again} data-test="waiting-again">{t("waiting-list-again")}</button>
      )}
    </section>
  );
}
