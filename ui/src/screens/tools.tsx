// Beside the answers: a photo, a note, leaving the point for now, taking the last answer back.
import { useRef } from "preact/hooks";
import { call } from "../calls";
import { base64Of } from "../files";
import { advanced } from "../state";
import type { PointState, Walk } from "../types";
import { moveOn, type Place } from "../walking";
import { t } from "../words";
import { NoteSheet } from "./note";
import { StepBack } from "./step-back";

interface ToolsProps {
  walk: Walk;
  place: Place;
  state: PointState | undefined;
  busy: boolean;
  act: (deed: () => Promise<void>) => void;
}

export function Tools({ walk, place, state, busy, act }: ToolsProps) {
  const note = useRef<HTMLDialogElement>(null);
  const point = place.point.id;
  const answered = state?.state === "done";

  const photo = (file: File | undefined) =>
    file &&
    act(async () => advanced(await call("photo-add", { walk: walk.id, point, data: await base64Of(file) })));

  return (
    <div class="tools" role="group" aria-label={t("tools")}>
      <label class="tool">
        {t("tool-photo")}
        <input
          type="file"
          class="unseen"
          accept="image/*"
          capture="environment"
          onChange={(event) => {
            photo(event.currentTarget.files?.[0]);
            event.currentTarget.value = "";
          }}
          data-test="photo"
        />
      </label>
      <button type="button" class="tool" onClick={() => note.current?.showModal()} data-test="say-more">
        {t("tool-note")}
      </button>
      {answered ? (
        <button type="button" class="tool" onClick={() => moveOn(walk, walk.progress)} data-test="go-on">
          {t("tool-go-on")}
        </button>
      ) : (
        <button
          type="button"
          class="tool"
          aria-disabled={busy}
          onClick={() => act(async () => moveOn(walk, await call("leave", { walk: walk.id, point })))}
          data-test="leave"
        >
          {t("tool-leave")}
        </button>
      )}
      <StepBack walk={walk} busy={busy} act={act} />
      <NoteSheet sheet={note} walk={walk.id} point={point} title={place.point.title} kept={state?.note ?? ""} />
    </div>
  );
}
