// Pictures put to a point: small ones in a row, each opened whole at a tap.
import { useRef } from "preact/hooks";
import { useLoad } from "../hooks";
import { t } from "../words";

export function Photos({ digests }: { digests: string[] }) {
  if (digests.length === 0) return null;
  return (
    <ul class="photos">
      {digests.map((digest, index) => (
        <li key={digest}>
          <Thumb digest={digest} number={index + 1} />
        </li>
      ))}
    </ul>
  );
}

function Thumb({ digest, number }: { digest: string; number: number }) {
  const { value, fault } = useLoad("photo", { digest });
  const whole = useRef<HTMLDialogElement>(null);
  const words = t("photo-number", { number });
  if (fault) return <span class="soft">{fault.message}</span>;
  if (!value) return <span class="soft">{words}</span>;
  const source = `data:${value.media};base64,${value.data}`;
  return (
    <>
      <button type="button" class="thumb" onClick={() => whole.current?.showModal()} aria-label={t("photo-open", { number })}>
        <img src={source} alt="" />
      </button>
      <dialog ref={whole} class="whole" aria-label={words}>
        <img src={source} alt={words} />
        <button type="button" class="small" onClick={() => whole.current?.close()}>
          {t("close")}
        </button>
      </dialog>
    </>
  );
}
