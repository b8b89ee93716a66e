// The PIN that makes the signature, on big keys.
import { useEffect, useId, useRef, useState } from "preact/hooks";
import { call } from "../calls";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import { Keys } from "../parts/keys";
import { t } from "../words";

interface SignProps {
  walk: string;
  onSigned: () => void;
  onClose: () => void;
}

export function SignSheet({ walk, onSigned, onClose }: SignProps) {
  const sheet = useRef<HTMLDialogElement>(null);
  const [pin, setPin] = useState("");
  const { busy, fault, act } = useAct();
  const id = useId();
  useEffect(() => sheet.current?.showModal(), []);

  const sign = () =>
    act(async () => {
      await call("sign", { walk, pin });
      onSigned();
    });

  return (
    <dialog ref={sheet} class="sheet" aria-labelledby={`${id}-title`} onClose={onClose} data-test="sign-sheet">
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void sign();
        }}
      >
        <h2 id={`${id}-title`}>{t("sign-title")}</h2>
        <label for={id}>{t("pin-yours")}</label>
        <input
          id={id}
          class="digits pin"
          type="password"
          inputMode="none"
          autocomplete="off"
          value={pin}
          onInput={(event) => setPin(event.currentTarget.value)}
          data-test="pin"
        />
        <FaultNote fault={fault} />
        <Keys
          onKey={(key) => setPin(pin + key)}
          onErase={() => setPin(pin.slice(0, -1))}
          enter={
            <button type="submit" class="go" aria-disabled={busy} data-test="sign">
              {t(busy ? "sign-busy" : "sign-now")}
            </button>
          }
        />
        <button type="button" class="tool" onClick={() => sheet.current?.close()} data-test="sign-not-yet">
          {t("sign-not-yet")}
        </button>
      </form>
    </dialog>
  );
}
