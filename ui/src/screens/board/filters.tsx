// Which machines are shown: by verdict, by owner, by what waits.
import type { Board, BoardRow, State } from "../../types";
import { t } from "../../words";

export interface Filter {
  state: State | "";
  person: string;
  due: boolean;
  second: boolean;
}

export const EVERY: Filter = { state: "", person: "", due: false, second: false };

const STATES: State[] = ["grounded", "limited", "fit"];

/** The rows that pass, in the order given: what needs a person first stays first. */
export function passing({ rows, second }: Board, filter: Filter): BoardRow[] {
  const waits = new Set(second.map(({ machine }) => machine));
  return rows.filter(
    ({ card, person, due }) =>
      (!filter.state || card.verdict.state === filter.state) &&
      (!filter.person || person === filter.person) &&
      (!filter.due || (due !== null && due.standing !== "later")) &&
      (!filter.second || waits.has(card.id)),
  );
}

export function Filters({ board, filter, onFilter }: { board: Board; filter: Filter; onFilter: (filter: Filter) => void }) {
  const put = (change: Partial<Filter>) => onFilter({ ...filter, ...change });
  const owners = [...new Map(board.rows.map(({ person, owner }) => [person, owner]))].sort(([, a], [, b]) => a.localeCompare(b));
  const tick = (name: "due" | "second", words: string) => (
    <label class="choice">
      <input type="checkbox" checked={filter[name]} onChange={(event) => put({ [name]: event.currentTarget.checked })} data-test={`filter-${name}`} />
      <span class="grow">{words}</span>
    </label>
  );
  return (
    <div class="beside filters" role="group" aria-label={t("board-filters")}>
      <label class="field">
        {t("filter-state")}
        <select value={filter.state} onChange={(event) => put({ state: event.currentTarget.value as State | "" })} data-test="filter-state">
          <option value="">{t("filter-all")}</option>
          {STATES.map((state) => <option key={state} value={state}>{t(`state-${state}`)}</option>)}
        </select>
      </label>
      <label class="field">
        {t("filter-owner")}
        <select value={filter.person} onChange={(event) => put({ person: event.currentTarget.value })} data-test="filter-owner">
          <option value="">{t("filter-everybody")}</option>
          {owners.map(([person, owner]) => <option key={person} value={person}>{owner}</option>)}
        </select>
      </label>
      {tick("due", t("filter-due"))}
      {tick("second", t("filter-second"))}
    </div>
  );
}
