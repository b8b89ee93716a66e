// Saying more: a note beside a point, kept by the core while it is being written.
import type { RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { asFault, call, type Fault } from "../calls";
import { useDraft } from "../drafts";
import { FaultNote } from "../parts/fault";
import { TextArea } from "../parts/field";
import { advanced } from "../state";
import { t } from "../words";

interface NoteProps {
  sheet: RefObject<HTMLDialogElement | null>;
  walk: string;
  point: string;
  title: string;
  kept: string;
}

const PAUSE_MS = 1500;

export function NoteSheet({ sheet, walk, point, title, kept }: NoteProps) {
  const [note, setNote, done] = useDraft(`${walk}/${point}/note`, kept);
  const [fault, setFault] = useState<Fault | null>(null);
  // One after the other, so that an older text never overwrites a newer one.
  const line = useRef<Promise<unknown>>(Promise.resolve());

  const keep = async (): Promise<boolean> => {
    if (note === kept) return true;
    const turn = line.current.then(() => call("note", { walk, point, note }));
    line.current = turn.catch(() => undefined);
    try {
      advanced(await turn);
      setFault(null);
      done();
      return true;
    } catch (thrown) {
      setFault(asFault(thrown));
      return false;
    }
  };
  useEffect(() => {
    const pause = setTimeout(keep, PAUSE_MS);
    return () => clearTimeout(pause);
  }, [note, kept]);

  return (
    <dialog
      ref={sheet}
      class="sheet"
      aria-label={t("note-title")}
      // Closed by the Escape key as well: what couldn't be kept comes back with its fault.
      onClose={async () => (await keep()) || sheet.current?.showModal()}
      data-test="note-sheet"
    >
      <h2>{t("note-title")}</h2>
      <TextArea words={t("note-words", { point: title })} value={note} onValue={setNote} test="note" rows={5} />
      <FaultNote fault={fault} />
      <button type="button" class="go" onClick={() => sheet.current?.close()} data-test="note-keep">
        {t("note-keep")}
      </button>
    </dialog>
  );
}
