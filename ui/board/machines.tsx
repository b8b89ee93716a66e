// One row a machine: a table where there is room for one, else one below the other.
import type { ComponentChildren } from "preact";
import { StateShape } from "../src/parts/shape";
import { to } from "../src/route";
import { Due, Open } from "../src/screens/board/cells";
import { useWide } from "../src/screens/board/wide";
import type { Board, BoardRow } from "../src/types";
import { t } from "../src/words";
import { Invented } from "./parts/invented";

export function Machines({ rows, board }: { rows: BoardRow[]; board: Board }) {
  const seen = rows.map((row) => ({ row, waits: board.second.some(({ machine }) => machine === row.card.id) }));
  return useWide() ? <Table rows={seen} /> : <Cards rows={seen} />;
}

type Seen = { row: BoardRow; waits: boolean };

function Table({ rows }: { rows: Seen[] }) {
  return (
    <table class="board machines" data-test="machines">
      <caption class="unseen">{t("wall-machines")}</caption>
      <thead>
        <tr>
          <th scope="col">{t("wall-verdict")}</th>
          <th scope="col">{t("board-machine")}</th>
          <th scope="col">{t("wall-owner")}</th>
          <th scope="col">{t("board-looked")}</th>
          <th scope="col">{t("board-due")}</th>
          <th scope="col">{t("board-open")}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ row, waits }) => (
          <tr key={row.card.id} data-test={`row-${row.card.id}`} data-state={row.card.verdict.state}>
            <td><Verdict row={row} /></td>
            <th scope="row"><Name row={row} /></th>
            <td>{row.owner}</td>
            <td>{row.looked}</td>
            <td><Due row={row} /></td>
            <td><Matters row={row} waits={waits} /></td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Cards({ rows }: { rows: Seen[] }) {
  return (
    <ul class="board-cards machines" data-test="machines">
      {rows.map(({ row, waits }) => (
        <li key={row.card.id} data-test={`row-${row.card.id}`} data-state={row.card.verdict.state}>
          <Verdict row={row}><Name row={row} /></Verdict>
          <Matters row={row} waits={waits} />
          {row.due && <p><span class="unseen">{t("board-due")}: </span><Due row={row} /></p>}
          <p class="soft">{row.owner} · {row.looked}</p>
        </li>
      ))}
    </ul>
  );
}

function Verdict({ row: { card }, children }: { row: BoardRow; children?: ComponentChildren }) {
  const { state } = card.verdict;
  return (
    <div class="row-verdict">
      <StateShape state={state} size={34} />
      <span class={state === "grounded" ? "strong stop" : "strong"}>{t(`state-${state}`)}</span>
      {children}
    </div>
  );
}

/** The name opens the machine, and the whole row with it. */
function Name({ row: { card, first } }: { row: BoardRow }) {
  return (
    <div class="row-name">
      <a href={to("machine", card.id)} data-test={`open-${card.id}`}>{card.name}</a>
      {card.verdict.state !== "fit" && <span class="row-first">{first}</span>}
      <span class="soft">{card.engine} · <span class="nobreak">{t("hours", { hours: card.hours })}</span></span>
      {card.invented && <Invented />}
    </div>
  );
}

function Matters({ row, waits }: Seen) {
  return (
    <>
      <Open row={row} />
      {waits && <p class="waits-eyes"><a href={to("second", row.card.id)} data-test={`eyes-${row.card.id}`}>{t("wall-eyes")}</a></p>}
    </>
  );
}
