// What a row of the board says, for the table and for the cards.
import type { BoardRow } from "../../types";
import { t } from "../../words";

/** What is open, and what waits by somebody's signature; but for what stands beside it already. */
export function Open({ row, but }: { row: BoardRow; but?: string }) {
  const { defects, watched, deferred, job } = row;
  const matters = (kind: string, words: string[]) =>
    words.filter((one) => !but?.startsWith(one)).map((one, index) => (
      <li key={kind + index}>
        <span class="strong">{t(`board-${kind}`)}</span> {one}
      </li>
    ));
  const titled = (all: BoardRow["defects"]) => all.map(({ title, words }) => `${title}: ${words}`);
  const all = [
    ...matters("defect", titled(defects)),
    ...matters("deferred", deferred),
    ...matters("watched", titled(watched)),
    ...(job ? matters("job", [job]) : []),
  ];
  return all.length === 0 ? null : <ul class="matters">{all}</ul>;
}

export function Due({ row: { due } }: { row: BoardRow }) {
  if (!due) return null;
  return (
    <>
      <span class={due.standing === "over" ? "stop strong" : "strong"}>{t(`due-${due.standing}`)}</span> {due.title}{" "}
      <span class="block soft">{due.left}</span>
    </>
  );
}
