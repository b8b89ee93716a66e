// A machine that is ready to be asked about its load and fuel: its wing described, the fuel of earlier flights logged.

/** Invented, as is the wing. */
export const WING = {
  with_motor: { low: kg(85), high: kg(120) },
  without_motor: { low: kg(65), high: kg(90) },
  document: "Manual of the Swallow 22, issue 2 (invented)",
  page: "12",
};

function kg(value) {
  return { value, unit: "kg" };
}

/** Says on the page's own device what the wing may carry and what the machine weighs. */
export async function describesTheWing(pilot, machine, pin) {
  const { description } = await pilot.ask("machine", { id: machine });
  await pilot.ask("machine-save", { id: machine, description: { ...description, wing_load: WING, weight: kg(24) }, pin });
}

/** Logs flights of half an hour, with what each burned, in litres. */
export async function burned(pilot, machine, litres) {
  for (const value of litres) {
    const added = { hours: 0.5, flights: 1, tanks: 0 };
    await pilot.ask("log-time", { machine, added, reading: null, note: "", fuel: { value, unit: "L" } });
  }
}
