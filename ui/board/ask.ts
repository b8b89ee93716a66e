// The one seam to the server. What it refuses comes as a fault that can be shown.
import { useEffect, useState } from "preact/hooks";
import { asFault, type Fault } from "../src/calls";
import { language, t } from "../src/words";
import { inWords } from "./faults";
import { board, signedOut } from "./state";
import { wished } from "./tongue";

export const get = <T>(path: string) => ask<T>(path, {});

export const post = <T>(path: string, body: unknown) =>
  ask<T>(path, { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) });

async function ask<T>(path: string, init: RequestInit): Promise<T> {
  let response: Response;
  try {
    const headers = { ...init.headers, "accept-language": wished() };
    response = await fetch(`desk/${path}`, { ...init, headers, credentials: "same-origin" });
  } catch {
    throw { kind: "unreachable", message: t("wall-unreachable"), hint: t("wall-unreachable-hint") } satisfies Fault;
  }
  const told = response.status === 204 ? undefined : await response.json().catch(() => undefined);
  // Files with faults are an answer, too.
  if (response.ok || (told && "preview" in told)) return told as T;
  if (told?.kind === "signed-out") signedOut();
  throw told ? inWords(asFault(told)) : { kind: "refused", message: t("fault-refused", { status: String(response.status) }), hint: t("fault-refused-hint") };
}

/** What the server tells at a path; asked anew whenever the board has gone on, or speaks another language. */
export function useGet<T>(path: string) {
  const [value, setValue] = useState<{ path: string; told: T } | null>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let wanted = true;
    get<T>(path).then(
      (told) => wanted && (setFault(null), setValue({ path, told })),
      (thrown) => wanted && setFault(asFault(thrown)),
    );
    return () => void (wanted = false);
  }, [path, board.value?.size, turn, language.value]);
  return { value: value?.path === path ? value.told : null, fault, again: () => setTurn(turn + 1) };
}
