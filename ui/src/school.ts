// This device's place in a school, as several screens show it, and how they come to know that records came.
import { signal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import { asFault, call, type Fault } from "./calls";
import type { SchoolView } from "./types";

/** None until it was asked for. */
export const school = signal<SchoolView | null>(null);

/** Rises when the server brought something: what stands on the screen is then asked for anew. */
export const brought = signal(0);

/** Often enough that nobody waits in front of the screen, seldom enough for a phone's battery. */
const LOOK_EVERY_MS = 20_000;

/** Takes what the core says of the school. */
export function heard(view: SchoolView) {
  const before = school.value;
  school.value = view;
  if (before && before.sync.receipts !== view.sync.receipts) brought.value += 1;
}

export async function lookAtSchool() {
  heard(await call("school", {}));
}

/** Looks again and again while the page is seen; the face syncs meanwhile. */
export function useWatch(wanted: boolean) {
  useEffect(() => {
    if (!wanted) return;
    // What this can't tell, the screen that needs it will.
    const look = () => void (document.hidden || lookAtSchool().catch(() => undefined));
    look();
    const clock = setInterval(look, LOOK_EVERY_MS);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(clock);
      document.removeEventListener("visibilitychange", look);
    };
  }, [wanted]);
}

/** The school for a screen about it: what is known at once, and what holds now as soon as it is there. */
export function useSchool() {
  const [fault, setFault] = useState<Fault | null>(null);
  const again = () => void lookAtSchool().then(() => setFault(null), (thrown) => setFault(asFault(thrown)));
  useEffect(again, []);
  return { value: school.value, fault, again };
}
