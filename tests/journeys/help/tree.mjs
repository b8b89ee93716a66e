// The accessibility tree as Chromium gives it to a screen reader.

/** What is there to be heard: role, name and description of each thing, in reading order. */
export async function heard(page) {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send("Accessibility.getFullAXTree");
  await session.detach();
  return nodes
    .filter(({ ignored }) => !ignored)
    .map(({ role, name, description }) => ({
      role: role?.value,
      // Parts laid out side by side are joined with a blank, which nobody hears.
      name: (name?.value ?? "").replace(/\s+/g, " ").replaceAll(" ,", ",").trim(),
      description: description?.value ?? "",
    }));
}
