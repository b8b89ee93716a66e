// A log's text, whatever wrote it: instruments write UTF-8, or what an older Windows calls its own.
export async function textOf(file: Blob): Promise<string> {
  const bytes = await file.arrayBuffer();
  try {
    // A mark at the beginning is part of the file, by whose bytes it is known again.
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
