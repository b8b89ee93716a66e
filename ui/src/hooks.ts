// Asking the core from a screen, and what becomes of the answer.
import { useEffect, useRef, useState } from "preact/hooks";
import { asFault, call, type Fault } from "./calls";
import { brought } from "./school";
import type { Calls } from "./types";
import { language } from "./words";

/** What a screen shows, asked for again whenever the question or the language changes, or the server brought something. */
export function useLoad<K extends keyof Calls>(name: K, args: Calls[K]["args"]) {
  const [value, setValue] = useState<Calls[K]["reply"] | null>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let wanted = true;
    setFault(null);
    call(name, args).then(
      (reply) => wanted && setValue(() => reply),
      (thrown) => wanted && setFault(asFault(thrown)),
    );
    return () => void (wanted = false);
  }, [name, JSON.stringify(args), turn, brought.value, language.value]);
  return { value, fault, again: () => setTurn(turn + 1), put: (reply: Calls[K]["reply"]) => setValue(() => reply) };
}

/** One deed at a time: whether it is under way, what went wrong, and trying it again. */
export function useAct() {
  const [busy, setBusy] = useState(false);
  const [fault, setFault] = useState<Fault | null>(null);
  const underWay = useRef(false);
  const last = useRef<() => Promise<void>>(undefined);

  async function act(deed: () => Promise<void>) {
    if (underWay.current) return;
    underWay.current = true;
    last.current = deed;
    setBusy(true);
    setFault(null);
    try {
      await deed();
    } catch (thrown) {
      setFault(asFault(thrown));
    } finally {
      underWay.current = false;
      setBusy(false);
    }
  }
  return { busy, fault, act, again: () => last.current && act(last.current), forget: () => setFault(null) };
}

/** Seconds that a point has really been on the screen; the clock stands while the page is hidden. */
export function useSeconds(point: string): () => number {
  const watch = useRef({ sum: 0, since: 0 as number | null });
  useEffect(() => {
    const now = () => performance.now();
    watch.current = { sum: 0, since: document.hidden ? null : now() };
    const turned = () => {
      const { sum, since } = watch.current;
      if (document.hidden && since !== null) watch.current = { sum: sum + now() - since, since: null };
      else if (!document.hidden && since === null) watch.current = { sum, since: now() };
    };
    document.addEventListener("visibilitychange", turned);
    return () => document.removeEventListener("visibilitychange", turned);
  }, [point]);
  return () => {
    const { sum, since } = watch.current;
    return (sum + (since === null ? 0 : performance.now() - since)) / 1000;
  };
}
