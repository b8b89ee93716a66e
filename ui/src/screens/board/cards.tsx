// The board in the hand: one card a machine.
import { StateShape } from "../../parts/shape";
import { to } from "../../route";
import type { BoardRow } from "../../types";
import { t } from "../../words";
import { Invented } from "../machines";
import { Due, Open } from "./cells";

export function Cards({ rows }: { rows: BoardRow[] }) {
  return (
    <ul class="board-cards">
      {rows.map((row) => (
        <li key={row.card.id} data-test={`row-${row.card.id}`} data-state={row.card.verdict.state}>
          <a class="board-name" href={to("machine", row.card.id)} data-test={`board-${row.card.id}`}>
            <StateShape state={row.card.verdict.state} size={28} />
            <span class="grow">{row.card.name}</span>
            <span class="num soft">{t("hours", { hours: row.card.hours })}</span>
          </a>
          {row.card.invented && <Invented />}
          <p><span class="strong">{row.card.verdict.headline}.</span> {row.first}</p>
          <Open row={row} but={row.first} />
          {row.due && <p><Due row={row} /></p>}
          <p class="soft">{row.owner} · {row.looked}</p>
        </li>
      ))}
    </ul>
  );
}
