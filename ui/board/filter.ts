// Which machines are shown, and in which order. No rule of the trade: what counts was decided in the core.
import { signal } from "@preact/signals";
import type { Board, BoardRow, Standing, State } from "../src/types";

export type Sort = "first" | "name" | "owner" | "looked" | "due";
export type What = "defects" | "deferred" | "due" | "second";

export interface Filter {
  state: State | null;
  person: string;
  what: What | null;
  search: string;
  sort: Sort;
}

export const EVERY: Filter = { state: null, person: "", what: null, search: "", sort: "first" };
export const filter = signal<Filter>(EVERY);
export const put = (change: Partial<Filter>) => void (filter.value = { ...filter.value, ...change });

/** How soon: what is over goes first, what isn't kept at all last. */
const SOON: Record<Standing, number> = { over: 0, tolerated: 1, soon: 2, later: 3 };

const passes: Record<What, (row: BoardRow, board: Board) => boolean> = {
  defects: ({ defects }) => defects.length > 0,
  deferred: ({ deferred }) => deferred.length > 0,
  due: ({ due }) => due !== null && due.standing !== "later",
  second: ({ card }, { second }) => second.some(({ machine }) => machine === card.id),
};

/** How many rows something is so of. */
export const countOf = (board: Board, what: What) => board.rows.filter((row) => passes[what](row, board)).length;

const plain = (text: string) => text.normalize("NFKD").replace(/\p{M}/gu, "").toLocaleLowerCase();

/** Everything a row says, for the search. */
const said = ({ card, owner, first, job, defects, deferred, due }: BoardRow) =>
  plain([card.name, card.engine, owner, first, job, due?.title, ...defects.map(({ title, words }) => `${title} ${words}`), ...deferred].join(" "));

const by: Record<Sort, (a: BoardRow, b: BoardRow) => number> = {
  // As the core has sorted them.
  first: () => 0,
  name: (a, b) => a.card.name.localeCompare(b.card.name),
  owner: (a, b) => a.owner.localeCompare(b.owner) || by.name(a, b),
  // Longest ago first; never looked at is longer still.
  looked: (a, b) => Date.parse(a.looked_at ?? "1970-01-01") - Date.parse(b.looked_at ?? "1970-01-01"),
  due: (a, b) => (a.due ? SOON[a.due.standing] : 4) - (b.due ? SOON[b.due.standing] : 4),
};

export function shown(board: Board, { state, person, what, search, sort }: Filter): BoardRow[] {
  const words = plain(search).split(/\s+/).filter(Boolean);
  const rows = board.rows.filter(
    (row) =>
      (!state || row.card.verdict.state === state) &&
      (!person || row.person === person) &&
      (!what || passes[what](row, board)) &&
      words.every((word) => said(row).includes(word)),
  );
  return rows.sort(by[sort]);
}
