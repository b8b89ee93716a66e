// Searching, whose machines, in which order.
import type { Board } from "../src/types";
import { t } from "../src/words";
import { EVERY, filter, put, type Sort } from "./filter";

const SORTS: Sort[] = ["first", "name", "owner", "looked", "due"];

export function Choose({ board, shown }: { board: Board; shown: number }) {
  const { person, search, sort, state, what } = filter.value;
  const owners = [...new Map(board.rows.map((row) => [row.person, row.owner]))].sort(([, a], [, b]) => a.localeCompare(b));
  return (
    <form class="choose" role="search" onSubmit={(event) => event.preventDefault()}>
      <label class="field">
        {t("wall-search")}
        <input type="search" value={search} onInput={(event) => put({ search: event.currentTarget.value })} data-test="search" />
      </label>
      <label class="field">
        {t("wall-owner")}
        <select value={person} onChange={(event) => put({ person: event.currentTarget.value })} data-test="owner">
          <option value="">{t("wall-everybody")}</option>
          {owners.map(([id, name]) => <option key={id} value={id}>{name}</option>)}
        </select>
      </label>
      <label class="field">
        {t("wall-sort")}
        <select value={sort} onChange={(event) => put({ sort: event.currentTarget.value as Sort })} data-test="sort">
          {SORTS.map((one) => <option key={one} value={one}>{t(`wall-sort-${one}`)}</option>)}
        </select>
      </label>
      {(person || search || state || what) && (
        <button type="button" class="small" onClick={() => put({ ...EVERY, sort })} data-test="every">{t("wall-every")}</button>
      )}
      <p role="status" class="soft shown" data-test="shown">
        {board.rows.length === 0 ? t("board-none") : t("board-shown", { count: shown, of: board.rows.length })}
      </p>
    </form>
  );
}
