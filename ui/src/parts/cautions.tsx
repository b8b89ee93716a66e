// The cautions that hold always.
import { start } from "../state";
import { t } from "../words";

export function Cautions() {
  return (
    <section class="cautions" aria-label={t("cautions")}>
      {start.value?.cautions.map((caution) => (
        <p key={caution}>{caution}</p>
      ))}
    </section>
  );
}

/** One caution, said where it counts. */
export function Caution({ words }: { words: string }) {
  return (
    <p class="caution" data-test="caution">
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path d="M4 20L20 4M4 12L12 4M12 20L20 12" />
      </svg>
      <span>
        <span class="unseen">{t("caution")} </span>
        {words}
      </span>
    </p>
  );
}
