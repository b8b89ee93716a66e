// The board on a wide screen: one row a machine.
import { StateShape } from "../../parts/shape";
import { to } from "../../route";
import type { BoardRow } from "../../types";
import { t } from "../../words";
import { Invented } from "../machines";
import { Due, Open } from "./cells";

export function Table({ rows }: { rows: BoardRow[] }) {
  return (
    <table class="board" data-test="board-table">
      <thead>
        <tr>
          <th scope="col">{t("board-machine")}</th>
          <th scope="col">{t("board-first")}</th>
          <th scope="col">{t("board-open")}</th>
          <th scope="col">{t("board-due")}</th>
          <th scope="col">{t("board-looked")}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.card.id} data-test={`row-${row.card.id}`} data-state={row.card.verdict.state}>
            <th scope="row">
              <a class="board-name" href={to("machine", row.card.id)} data-test={`board-${row.card.id}`}>
                <StateShape state={row.card.verdict.state} size={28} />
                <span class="grow">{row.card.name}</span>
              </a>
              <span class="block soft">{row.owner} · {t("hours", { hours: row.card.hours })}</span>
              {row.card.invented && <Invented />}
            </th>
            <td>
              <span class="strong">{row.card.verdict.headline}</span>
              {row.first && <span class="block">{row.first}</span>}
            </td>
            <td><Open row={row} /></td>
            <td><Due row={row} /></td>
            <td>{row.looked}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
