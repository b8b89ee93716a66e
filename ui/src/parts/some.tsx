// A long list's first rows, and the rest behind one more tap, so that what follows stays near.
import type { ComponentChildren } from "preact";
import { t } from "../words";

const FIRST = 5;

export function Some({ rows, look = "rows" }: { rows: ComponentChildren[]; look?: "rows" | "plain-list" }) {
  // One or two rows aren't worth a tap.
  const shown = rows.length <= FIRST + 2 ? rows.length : FIRST;
  return (
    <>
      <ul class={look}>{rows.slice(0, shown)}</ul>
      {rows.length > shown && (
        <details>
          <summary data-test="more">{t("some-more", { count: rows.length - shown })}</summary>
          <ul class={look}>{rows.slice(shown)}</ul>
        </details>
      )}
    </>
  );
}
