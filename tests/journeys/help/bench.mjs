// Where the torque bench stands, read off its drawing; to be run in the page.
export const BENCH = `(() => {
  const nut = document.querySelector(".nuts .here text");
  return nut && { nut: Number(nut.textContent), setting: document.querySelector(".setting").innerText };
})()`;
