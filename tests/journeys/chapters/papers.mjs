// Papers to take away: each a file of its kind (its reading programs are asked in tests/outside).
import assert from "node:assert/strict";

/** The machine's label, its table and its calendar; the sheet of its release. */
export async function takesPapersAway(pilot) {
  const kinds = { label: [/\.pdf$/, /^%PDF-/], csv: [/\.csv$/, /Field bramble/], calendar: [/\.ics$/, /^BEGIN:VCALENDAR\r\n/] };
  for (const [test, kind] of Object.entries(kinds)) await isOfItsKind(pilot, test, ...kind);
  await pilot.of("entry-job-released").first().click();
  await pilot.on("record");
  for (const sheet of ["sheet-a4", "sheet-letter"]) await isOfItsKind(pilot, sheet, /\.pdf$/, /^%PDF-/);
  await pilot.tap("back");
  await pilot.on("machine");
}

async function isOfItsKind(pilot, test, naming, beginning) {
  const { name, bytes } = await pilot.download(test);
  assert.match(name, naming);
  assert.match(bytes.toString("latin1"), beginning);
  assert.match(await pilot.says("paper-saved"), new RegExp(name));
}
