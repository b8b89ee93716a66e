// Ways to screens, by their address.

/** A point of a machine's list before flight. */
export const point = (machine, id) => async (pilot, ids) => {
  await pilot.goTo("walk", ids[machine], "before-flight", "point", id);
  await pilot.on("point");
};

/** A screen at an address; words that stand for ids become them. */
export const place = (screen, ...parts) => async (pilot, ids) => {
  await pilot.goTo(...parts.map((part) => ids[part] ?? part));
  await pilot.on(screen);
};
