// The order of taking apart or putting back, drawn: parts and joints strung on one axis, first at the
// top. It is an ordered list as well, so that every reader gets the order.
import type { PlanItem } from "../types";
import { t } from "../words";
import { PART_SHAPES } from "./part-shapes";

/** What has no drawing of its own: a plain block. */
const BLOCK = "M26 14H94V42H26Z";

export function Exploded({ items, words }: { items: PlanItem[]; words: string }) {
  return (
    <ol class="exploded" aria-label={words}>
      {items.map((item, index) => (
        <li key={item.id} class={item.joint ? "joint" : "part-row"}>
          <span class="exploded-number" aria-hidden="true">{index + 1}</span>
          <svg viewBox="0 0 120 56" preserveAspectRatio="none" class="axis" aria-hidden="true">
            <path d="M60 0V56" />
          </svg>
          {item.joint ? <JointShape /> : <PartShape id={item.id} />}
          <span class="grow">
            <span class="unseen">{t(item.joint ? "exploded-joint" : "exploded-part")} </span>
            {item.words}
          </span>
        </li>
      ))}
    </ol>
  );
}

function PartShape({ id }: { id: string }) {
  const { outline, lines } = PART_SHAPES[id] ?? { outline: BLOCK };
  return (
    <svg viewBox="0 0 120 56" class="piece" aria-hidden="true">
      <path class="outline" d={outline} />
      {lines && <path class="inner" d={lines} />}
    </svg>
  );
}

/** Two faces that meet, and the stripe of paint across them. */
function JointShape() {
  return (
    <svg viewBox="0 0 120 56" class="piece" aria-hidden="true">
      <path class="face" d="M36 24H84M36 32H84" />
      <path class="paint-stroke" d="M46 44L74 12" />
    </svg>
  );
}
