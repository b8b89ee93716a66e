// The camera as a reader of codes: frame after frame goes to the core until it finds one.
import { useEffect, useRef, useState } from "preact/hooks";
import { asFault, call, type Fault } from "../calls";
import { t } from "../words";
import { FaultNote } from "./fault";

/** Often enough to feel at once, seldom enough for an old phone. */
const LOOK_EVERY_MS = 400;
/** Wide enough for the largest code that we show. */
const WIDEST = 1280;

/** The camera's picture, looked at again and again until a code is in it. */
export function Camera({ onText, onEnd }: { onText: (text: string) => void; onEnd: () => void }) {
  const video = useRef<HTMLVideoElement>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  useEffect(() => {
    let stream: MediaStream | undefined;
    let over = false;
    const run = async () => {
      stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment", width: { ideal: WIDEST } } });
      if (over) return stop(stream);
      if (!video.current) return;
      video.current.srcObject = stream;
      await video.current.play();
      while (!over) {
        const found = await look(video.current);
        if (over) return;
        if (found !== null) return onText(found);
        await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
      }
    };
    run().catch((thrown) => over || setFault(cameraFault(thrown)));
    return () => {
      over = true;
      if (stream) stop(stream);
    };
  }, []);
  return (
    <div class="camera">
      <FaultNote fault={fault} />
      {!fault && <video ref={video} muted playsInline aria-label={t("code-camera-view")} data-test="code-view" />}
      <button type="button" onClick={onEnd} data-test="code-camera-off">
        {t("code-camera-off")}
      </button>
    </div>
  );
}

const stop = (stream: MediaStream) => stream.getTracks().forEach((track) => track.stop());

/** One frame; none where no code is in it. */
async function look(video: HTMLVideoElement): Promise<string | null> {
  if (!video.videoWidth) return null;
  const scale = Math.min(1, WIDEST / video.videoWidth);
  const canvas = Object.assign(document.createElement("canvas"), {
    width: Math.round(video.videoWidth * scale),
    height: Math.round(video.videoHeight * scale),
  });
  canvas.getContext("2d")?.drawImage(video, 0, 0, canvas.width, canvas.height);
  const data = canvas.toDataURL("image/jpeg", 0.85).replace(/^[^,]*,/, "");
  try {
    return await call("read-code", { data });
  } catch (thrown) {
    // A frame without a code is what most frames are.
    if (asFault(thrown).kind === "code-unreadable") return null;
    throw thrown;
  }
}

/** What the browser says when it has no camera or may not use it is no sentence for a pilot. */
function cameraFault(thrown: unknown): Fault {
  if (thrown instanceof DOMException || thrown instanceof TypeError)
    return { kind: "no-camera", message: t("code-no-camera"), hint: t("code-no-camera-hint") };
  return asFault(thrown);
}
