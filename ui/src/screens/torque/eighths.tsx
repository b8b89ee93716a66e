// How far a nut turned before the click, in eighths of a turn.
import { t } from "../../words";

/** The core takes no more than two turns. */
const MOST = 16;
/** What has a button of its own. */
export const NEAR = [0, 1, 2, 4];

interface EighthsProps {
  nut: number;
  value: number | null;
  onValue: (eighths: number) => void;
}

export function Eighths({ nut, value, onValue }: EighthsProps) {
  const more = value !== null && !NEAR.includes(value);
  return (
    <div class="eighths" role="group" aria-label={t("torque-how-far", { nut })}>
      <div class="eighth-row">
        {NEAR.map((eighths) => (
          <button
            key={eighths}
            type="button"
            class="eighth"
            aria-pressed={value === eighths}
            onClick={() => onValue(eighths)}
            aria-label={eighths === 0 ? undefined : turnWords(eighths)}
            data-test={`eighths-${eighths}`}
          >
            <Turn eighths={eighths} />
            <span>{eighths === 0 ? t("torque-none") : FRACTIONS[eighths]}</span>
          </button>
        ))}
        <button type="button" class="eighth" aria-pressed={more} onClick={() => onValue(more ? (value ?? 3) : 3)} data-test="eighths-more">
          <Turn eighths={more ? (value ?? 0) : 6} />
          <span>{t("torque-more")}</span>
        </button>
      </div>
      {more && (
        <div class="stepper">
          <button type="button" onClick={() => onValue(Math.max(0, value - 1))} aria-label={t("torque-less-by-one")} data-test="eighths-less">−</button>
          <output class="num" data-test="eighths-value">{turnWords(value)}</output>
          <button type="button" onClick={() => onValue(Math.min(MOST, value + 1))} aria-label={t("torque-more-by-one")} data-test="eighths-plus">+</button>
        </div>
      )}
    </div>
  );
}

const FRACTIONS = ["0", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];

/** Three eighths as ⅜, nine as 1⅛. */
function fraction(eighths: number): string {
  const [whole, rest] = [Math.floor(eighths / 8), eighths % 8];
  if (whole === 0) return FRACTIONS[rest] ?? "";
  return rest === 0 ? String(whole) : `${whole}${FRACTIONS[rest]}`;
}

export function turnWords(eighths: number): string {
  return eighths === 0 ? t("torque-not-at-all") : t("torque-turn", { turn: fraction(eighths) });
}

/** The part of a turn, as a filled sector. */
function Turn({ eighths }: { eighths: number }) {
  const angle = (Math.min(eighths, 7.99) / 8) * 2 * Math.PI;
  const [x, y] = [12 + 9 * Math.sin(angle), 12 - 9 * Math.cos(angle)];
  return (
    <svg class="turn" viewBox="0 0 24 24" aria-hidden="true">
      <circle cx="12" cy="12" r="9" />
      {eighths > 0 && <path d={`M12 12V3A9 9 0 ${angle > Math.PI ? 1 : 0} 1 ${x} ${y}Z`} />}
    </svg>
  );
}
