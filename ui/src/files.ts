// Files in and out, in the app's window and in a browser.
import { invoke } from "@tauri-apps/api/core";
import { inWindow } from "./calls";
import type { FileBytes } from "./types";

/** Gives a file to the person; where it went, when that is known. */
export async function saveFile(name: string, text: string): Promise<string> {
  if (inWindow) return invoke<string>("save_file", { name, text });
  return download(name, new Blob([text], { type: "application/octet-stream" }));
}

/** The same with a file of any kind. */
export async function saveBytes({ name, media, data }: FileBytes): Promise<string> {
  if (inWindow) return invoke<string>("save_bytes", { name, data });
  const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
  return download(name, new Blob([bytes], { type: media }));
}

function download(name: string, blob: Blob): string {
  const address = URL.createObjectURL(blob);
  const link = Object.assign(document.createElement("a"), { href: address, download: name });
  link.click();
  // The browser reads it after the click; a moment later nobody needs it.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
  return name;
}

/** A chosen file's bytes, base64. */
export function base64Of(file: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^[^,]*,/, ""));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(file);
  });
}
