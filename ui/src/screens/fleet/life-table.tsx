// The numbers behind the curve, as a table; made when it is opened.
import { useState } from "preact/hooks";
import type { LifePoint, LifeStep, LifeView } from "../../types";
import { t } from "../../words";

/** Rows enough to see the curve; the fitted one has many more points than anybody reads. */
const MOST = 12;

export function LifeTable({ life: { survival, fitted } }: { life: LifeView }) {
  const [open, setOpen] = useState(false);
  if (survival.length === 0) return null;
  const every = Math.max(1, Math.ceil(fitted.length / MOST));
  const some = fitted.filter((_, index) => index % every === 0);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary data-test="life-table-open">{t("life-table")}</summary>
      {open && (
        <>
          <Shares name={t("drawn-steps")} rows={survival.map(row)} />
          {some.length > 0 && <Shares name={t("drawn-fitted")} rows={some.map(row)} />}
        </>
      )}
    </details>
  );
}

function row({ hours, share, low, high }: LifeStep | LifePoint): [number, string] {
  return [hours, t("share-between", { percent: 100 * share, low: 100 * low, high: 100 * high })];
}

function Shares({ name, rows }: { name: string; rows: [number, string][] }) {
  return (
    <table class="board readings-table" data-test="life-table">
      <caption>{name}</caption>
      <thead>
        <tr>
          <th scope="col">{t("trend-hours")}</th>
          <th scope="col">{t("life-share")}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([hours, share], index) => (
          <tr key={index}>
            <th scope="row" class="num">{t("hours", { hours })}</th>
            <td>{share}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
