// The readings behind a chart, as a table; made when it is opened, since there may be years of them.
import { useState } from "preact/hooks";
import { to } from "../../route";
import type { TrendView } from "../../types";
import { t } from "../../words";

export function ReadingsTable({ trend: { id, title, points } }: { trend: TrendView }) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary data-test={`table-open-${id}`}>{t("trend-table", { count: points.length })}</summary>
      {open && (
        <table class="board readings-table" data-test={`table-${id}`}>
          <caption class="unseen">{title}</caption>
          <thead>
            <tr>
              <th scope="col">{t("trend-hours")}</th>
              <th scope="col">{t("trend-reading")}</th>
            </tr>
          </thead>
          <tbody>
            {points.map(({ hours, words, record, far_off }, index) => (
              <tr key={index}>
                <th scope="row" class="num">{t("hours", { hours })}</th>
                <td>
                  {record ? <a href={to("record", record)}>{words}</a> : words}
                  {!record && <span class="block soft">{t("trend-unsigned")}</span>}
                  {far_off && <span class="block soft">{t("trend-far-off")}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </details>
  );
}
