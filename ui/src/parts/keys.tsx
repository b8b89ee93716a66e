// Big keys for gloved fingers; the device's own keyboard types the same.
import type { ComponentChildren } from "preact";
import { t } from "../words";

interface KeysProps {
  /** What a digit or sign key adds. */
  onKey: (key: string) => void;
  onErase: () => void;
  /** The keys beside nought: signs, or nothing. */
  left?: string;
  right?: string;
  /** The tall key at the lower right. */
  enter: ComponentChildren;
}

export function Keys({ onKey, onErase, left, right, enter }: KeysProps) {
  const key = (sign: string | undefined, place: string) =>
    sign ? (
      <button type="button" class="key" style={{ gridArea: place }} onClick={() => onKey(sign)} data-test={`key-${sign}`}>
        {sign}
      </button>
    ) : null;
  return (
    <div class={`keys ${right ? "signed" : ""}`} role="group" aria-label={t("keys")}>
      {["1", "2", "3", "4", "5", "6", "7", "8", "9", "0"].map((digit) => key(digit, `k${digit}`))}
      {key(left, "left")}
      {key(right, "right")}
      <button type="button" class="key" style={{ gridArea: "erase" }} onClick={onErase} aria-label={t("keys-erase")} data-test="key-erase">
        <svg viewBox="0 0 32 24" aria-hidden="true" class="erase">
          <path d="M10 3H29V21H10L2 12Z M14 8L23 16M23 8L14 16" />
        </svg>
      </button>
      <div class="enter">{enter}</div>
    </div>
  );
}
