// The button that reads a point aloud; it isn't there where nothing could read.
import { useEffect } from "preact/hooks";
import { canRead, hush, readAloud, reading } from "../aloud";
import { start } from "../state";
import type { PointView } from "../types";
import { language, t } from "../words";

export function ReadAloud({ point }: { point: PointView }) {
  const now = reading.value === point.id;
  // A caution before everything else.
  const band = point.ask.by !== "words" && /\d/.test(point.ask.words) ? t("measure-band", { band: point.ask.words }) : null;
  const sentences = [point.caution, point.title, `${t("point-good")} ${point.good}`, `${t("point-bad")} ${point.bad}`, band];
  const read = () => readAloud(point.id, sentences.filter((sentence) => sentence !== null));
  useEffect(() => {
    if (start.value?.read_aloud && canRead.value) read();
    return hush;
  }, [point.id, language.value, canRead.value]);
  if (!canRead.value) return null;
  return (
    <button type="button" class="aloud" aria-pressed={now} onClick={now ? hush : read} data-test="read-aloud">
      <svg viewBox="0 0 28 28" aria-hidden="true">
        <path d="M4 11V17H9L15 22V6L9 11Z" />
        {now ? <path class="bar" d="M19 9V19M24 9V19" /> : <path class="waves" d="M19 10Q21.5 14 19 18M22.5 7Q27 14 22.5 21" />}
      </svg>
      <span class="unseen">{t("aloud")}</span>
    </button>
  );
}
