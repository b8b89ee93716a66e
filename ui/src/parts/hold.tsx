// Hold to sign: a finger or a key held for a second, so that no slip signs.
import { useEffect, useRef, useState } from "preact/hooks";

const HOLD_MS = 1000;

export function Hold({ words, onHeld, test }: { words: string; onHeld: () => void; test: string }) {
  const [holding, setHolding] = useState(false);
  const timer = useRef<number>(undefined);
  const start = () => {
    if (timer.current !== undefined) return;
    setHolding(true);
    timer.current = window.setTimeout(() => (stop(), onHeld()), HOLD_MS);
  };
  const stop = () => {
    clearTimeout(timer.current);
    timer.current = undefined;
    setHolding(false);
  };
  useEffect(() => stop, []);
  const isKey = (event: KeyboardEvent) => event.key === " " || event.key === "Enter";
  return (
    <button
      type="button"
      class={`hold ${holding ? "holding" : ""}`}
      onPointerDown={start}
      onPointerUp={stop}
      onPointerLeave={stop}
      onPointerCancel={stop}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => isKey(event) && (event.preventDefault(), start())}
      onKeyUp={stop}
      onBlur={stop}
      data-test={test}
    >
      <span class="under">{words}</span>
      <span class="over-paint" aria-hidden="true">{words}</span>
    </button>
  );
}
