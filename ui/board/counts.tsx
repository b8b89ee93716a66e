// How many of what; each count is also the filter for it.
import { StateShape } from "../src/parts/shape";
import type { Board, State } from "../src/types";
import { t } from "../src/words";
import { countOf, filter, put, type What } from "./filter";

const STATES: State[] = ["grounded", "limited", "fit"];
const WHATS: What[] = ["defects", "deferred", "due", "second"];

export function Counts({ board }: { board: Board }) {
  const { state, what } = filter.value;
  return (
    <div class="counts" role="group" aria-label={t("wall-counts")}>
      {STATES.map((one) => (
        <button
          key={one}
          type="button"
          class="count"
          aria-pressed={state === one}
          onClick={() => put({ state: state === one ? null : one })}
          data-test={`count-${one}`}
        >
          <StateShape state={one} size={30} />
          <span class="number">{board.rows.filter(({ card }) => card.verdict.state === one).length}</span>
          <span>{t(`state-${one}`)}</span>
        </button>
      ))}
      {WHATS.map((one) => (
        <button
          key={one}
          type="button"
          class="count"
          aria-pressed={what === one}
          onClick={() => put({ what: what === one ? null : one })}
          data-test={`count-${one}`}
        >
          <span class="number">{countOf(board, one)}</span>
          <span>{t(`wall-count-${one}`)}</span>
        </button>
      ))}
    </div>
  );
}
