// The one seam to the core: in the app's window by its own channel, in a browser over loopback.
import { invoke } from "@tauri-apps/api/core";
import type { Calls } from "./types";
import { t } from "./words";

/** What went wrong, and what to do about it. */
export interface Fault {
  kind: string;
  message: string;
  hint: string;
}

export const inWindow = "__TAURI_INTERNALS__" in window;

export async function call<K extends keyof Calls>(name: K, args: Calls[K]["args"]): Promise<Calls[K]["reply"]> {
  if (inWindow) return invoke<Calls[K]["reply"]>("call", { call: { call: name, args } });
  return overLoopback(name, args);
}

async function overLoopback<K extends keyof Calls>(name: K, args: Calls[K]["args"]): Promise<Calls[K]["reply"]> {
  let response: Response;
  try {
    response = await fetch("call", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ call: name, args }),
    });
  } catch {
    throw { kind: "unreachable", message: t("fault-unreachable"), hint: t("fault-unreachable-hint") } satisfies Fault;
  }
  if (!response.ok) throw await faultOf(response);
  return response.json();
}

async function faultOf(response: Response): Promise<Fault> {
  try {
    return asFault(await response.json());
  } catch {
    return {
      kind: "refused",
      message: t("fault-refused", { status: String(response.status) }),
      hint: t("fault-refused-hint"),
    };
  }
}

/** Whatever was thrown, as something that can be shown. */
export function asFault(thrown: unknown): Fault {
  if (typeof thrown === "object" && thrown !== null && "message" in thrown) {
    const { kind, message, hint } = thrown as Partial<Fault>;
    return { kind: kind ?? "unexpected", message: String(message), hint: hint ?? t("fault-unexpected-hint") };
  }
  return { kind: "unexpected", message: String(thrown), hint: t("fault-unexpected-hint") };
}
