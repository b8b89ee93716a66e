// The big keys under the thumb, for whichever value is being typed; they go when none is.
import type { ComponentChildren, RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { Keys } from "../../parts/keys";
import { decimalMark, t } from "../../words";

/** Marks an input that the keys type into. */
export const TYPED = "typed";
const INPUTS = `input[data-kind="${TYPED}"]`;

/** Keys and values have room beside each other in the hand; a wide window has a keyboard of its own,
 * and with large letters the device's own keyboard takes less room. */
const ROOM = "(min-height: 40rem) and (min-width: 20rem) and (max-width: 55rem), (min-height: 40rem) and (pointer: coarse)";

export function useRoomForKeys(): boolean {
  const [room, setRoom] = useState(() => matchMedia(ROOM).matches);
  useEffect(() => {
    const media = matchMedia(ROOM);
    const look = () => setRoom(media.matches);
    media.addEventListener("change", look);
    return () => media.removeEventListener("change", look);
  }, []);
  return room;
}

/** Follows the focus among a form's values. */
export function usePad(form: RefObject<HTMLElement | null>, room: boolean) {
  const [input, setInput] = useState<HTMLInputElement | null>(null);
  const pad = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = form.current;
    if (!element) return;
    const came = ({ target }: FocusEvent) => {
      if (!(target instanceof HTMLInputElement) || !target.matches(INPUTS)) return setInput(null);
      target.select();
      setInput(target);
    };
    const left = ({ relatedTarget }: FocusEvent) => {
      const stays = relatedTarget instanceof Node && (pad.current?.contains(relatedTarget) || element.contains(relatedTarget));
      if (!stays) setInput(null);
    };
    element.addEventListener("focusin", came);
    element.addEventListener("focusout", left);
    return () => {
      element.removeEventListener("focusin", came);
      element.removeEventListener("focusout", left);
    };
  }, [form.current]);
  // The keys take room from the values: what is typed must not end up below them.
  useEffect(() => input?.scrollIntoView({ block: "center" }), [input, room]);
  return { input: room ? input : null, pad, leave: () => (input?.blur(), setInput(null)) };
}

interface PadProps {
  input: HTMLInputElement;
  /** What lies around the values, to find the next one. */
  form: RefObject<HTMLElement | null>;
  pad: RefObject<HTMLDivElement | null>;
  onLeave: () => void;
  /** What comes of the part so far. */
  children: ComponentChildren;
}

export function Pad({ input, form, pad, onLeave, children }: PadProps) {
  const write = (text: string, from: number, to: number) => {
    input.setRangeText(text, from, to, "end");
    input.dispatchEvent(new Event("input", { bubbles: true }));
  };
  const ends = () => [input.selectionStart ?? input.value.length, input.selectionEnd ?? input.value.length] as const;
  const add = (key: string) => {
    if (key === "−") return input.value.startsWith("-") ? write("", 0, 1) : write("-", 0, 0);
    write(key, ...ends());
  };
  const erase = () => {
    const [from, to] = ends();
    if (from < to || from > 0) write("", from < to ? from : from - 1, to);
  };
  const all = [...(form.current?.querySelectorAll<HTMLInputElement>(INPUTS) ?? [])];
  const next = all[all.indexOf(input) + 1];
  return (
    // A finger on a key leaves the focus where the digits go.
    <div class="pad" ref={pad} onMouseDown={(event) => event.preventDefault()} onKeyDown={(event) => event.key === "Escape" && onLeave()}>
      <div class="pad-over">
        <div class="grow">{children}</div>
        <button type="button" class="small" onClick={onLeave} data-test="pad-away">{t("flight-pad-away")}</button>
      </div>
      <Keys
        onKey={add}
        onErase={erase}
        left={decimalMark()}
        {...(input.dataset["signed"] ? { right: "−" } : {})}
        enter={
          <button type="button" class="go" onClick={() => (next ? next.focus() : onLeave())} data-test="pad-next">
            {t(next ? "flight-pad-next" : "flight-pad-done")}
          </button>
        }
      />
    </div>
  );
}
