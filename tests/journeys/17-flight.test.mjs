// Load, fuel, air and wind in the before-flight flow: typed in gloves, judged at once, in the verdict, and signed.
import assert from "node:assert/strict";
import { test } from "node:test";
import { comesIn } from "./help/arrival.mjs";
import { burned, describesTheWing } from "./help/flying.mjs";
import { PIN } from "./help/pilot.mjs";
import { begun, registered } from "./help/prepared.mjs";
import { until, world } from "./help/world.mjs";

/** A list all answered and not signed, and a pilot in front of it. */
async function beforeSigning(t) {
  const here = world(t);
  const machine = registered(here);
  begun(here, machine, {});
  const { pilot } = await comesIn(t, here);
  return { machine, pilot };
}

const summary = async (pilot, machine) => {
  await pilot.goTo("walk", machine, "before-flight", "summary");
  await pilot.on("summary");
};
const state = (pilot, part) => pilot.attribute(`flight-part-${part}`, "data-state");
const becomes = (pilot, part, wanted) => until(`${part} to be ${wanted}`, async () => (await state(pilot, part)) === wanted);

test("the machine's form says what the wing may carry; a wing over its range grounds while it is typed", async (t) => {
  const { machine, pilot } = await beforeSigning(t);
  await pilot.goTo("machine", machine, "flight");
  await pilot.on("flight");
  await pilot.tap("flight-open-load");
  await pilot.tap("flight-to-wing");
  await pilot.on("machine-form");
  await pilot.tap("machine-load");
  await pilot.type("weight", "24");
  // Half a range is no range, and what was typed stays.
  await pilot.type("wing-low", "85");
  await pilot.sign();
  assert.equal((await pilot.fault()).kind, "no-number");
  assert.equal(await pilot.of("wing-low").inputValue(), "85");
  await pilot.type("wing-high", "120");
  await pilot.type("wing-document", "Manual of the Swallow 22, issue 2 (invented)");
  await pilot.type("wing-page", "12");
  await pilot.sign();
  await pilot.on("machine");
  assert.equal(await pilot.attribute("to-flight", "data-state"), "open");
  await pilot.tap("to-flight");
  await pilot.on("flight");
  assert.match(await pilot.says("flight-wing"), /85 to 120 kg .*Swallow 22.*12/);

  assert.equal(await pilot.of("flight-machine").inputValue(), "24", "what the machine weighs is known");
  await pilot.type("flight-pilot", "71");
  await pilot.of("flight-part-load").locator('[data-test="flight-fuel"]').fill("6");
  await becomes(pilot, "load", "fit");
  // Petrol weighs 0.720 to 0.775 kg a litre (EN 228, 15 °C; from memory).
  const total = Number(/All-up ([\d.]+) kg/.exec(await pilot.says("flight-part-load"))[1]);
  assert.ok(total >= 71 + 24 + 6 * 0.72 && total <= 71 + 24 + 6 * 0.775 + 0.05, `${total} kg`);
  await pilot.type("flight-pilot", "100");
  await becomes(pilot, "load", "grounded");
  assert.match(await pilot.says("flight-part-load"), /above the most this wing may carry/);
});

test("what is half typed is told and not kept; nothing is lost on the way elsewhere; a part can be left out", async (t) => {
  const { machine, pilot } = await beforeSigning(t);
  await describesTheWing(pilot, machine, PIN);
  await pilot.goTo("machine", machine, "flight");
  await pilot.on("flight");
  await pilot.type("flight-pilot", "71");
  await pilot.type("flight-mean", "twelve");
  assert.equal(await pilot.of("flight-mean").inputValue(), "", "letters are no wind");
  await pilot.type("flight-mean", "1.2.3");
  assert.match(await pilot.of("flight-part-wind").locator('[data-test="flight-fault"]').innerText(), /1\.2\.3/);
  await pilot.page.locator("h1").click();
  await pilot.tap("flight-keep");
  const fault = await pilot.fault();
  assert.equal(fault.kind, "flight-lacks");
  assert.match(fault.words, /Fuel at take-off/);
  await pilot.goTo("settings");
  await pilot.on("settings");
  await pilot.goTo("machine", machine, "flight");
  await pilot.on("flight");
  assert.equal(await pilot.of("flight-mean").inputValue(), "1.2.3");
  if (!(await pilot.has("flight-pilot"))) await pilot.tap("flight-open-load");
  assert.equal(await pilot.of("flight-pilot").inputValue(), "71");
  await pilot.tap("flight-out-wind");
  assert.equal(await state(pilot, "wind"), "out");
  await pilot.tap("flight-open-wind");
  assert.equal(await pilot.of("flight-mean").inputValue(), "1.2.3", "what is left out is not thrown away");
});

test("oil for the mix in huge digits, and one tap says that it is in", async (t) => {
  const { machine, pilot } = await beforeSigning(t);
  await pilot.goTo("machine", machine, "flight");
  await pilot.tap("flight-open-mix");
  assert.match(await pilot.says("flight-part-mix"), /no flames, and no phone/);
  await pilot.type("flight-inTank", "2");
  await pilot.type("flight-addFuel", "6");
  await pilot.type("flight-target", "50");
  await pilot.type("flight-ratioInTank", "50");
  await becomes(pilot, "mix", "limited");
  // What is mixed at 50:1 needs none; 6 L of petrol at 50:1 need 6 L / 50 (arithmetic).
  assert.match(await pilot.says("flight-pour"), /120 mL/);
  await pilot.tap("flight-poured");
  await pilot.gone("flight-pour");
  assert.equal(await pilot.of("flight-oil").inputValue(), "120");
  await until("the oil to be in", async () => !/have to go into the tank/.test(await pilot.says("flight-part-mix")));
});

test("kept from the summary it enters the verdict, is signed with the list, and its reason leads back to it", async (t) => {
  const { machine, pilot } = await beforeSigning(t);
  await describesTheWing(pilot, machine, PIN);
  await burned(pilot, machine, [1.7, 1.9, 1.8, 1.75]);
  await summary(pilot, machine);
  assert.equal(await pilot.attribute("to-flight", "data-state"), "open");
  await pilot.tap("to-flight");
  await pilot.on("flight");

  // On the big keys, from value to value.
  const digits = async (text) => {
    for (const key of text) await pilot.tap(`key-${key}`);
  };
  await pilot.tap("flight-pilot");
  await digits("71");
  await pilot.tap("pad-next");
  await pilot.tap("pad-next");
  await digits("6.5");
  await pilot.tap("pad-away");
  await becomes(pilot, "load", "fit");
  const fuel = pilot.of("flight-part-fuel");
  assert.equal(await fuel.locator('[data-test="flight-fuel"]').inputValue(), "6.5", "fuel is typed once");
  await pilot.type("flight-minutes", "60");
  await pilot.type("flight-reserve", "20");
  await becomes(pilot, "fuel", "fit");
  // 6.5 L at 1.7 to 1.9 L in half an hour last 6.5/3.8 h and more, 103 min less 20 min (arithmetic).
  assert.match(await fuel.innerText(), /1 h 2[23] min/);
  await pilot.type("flight-minutes", "120");
  await becomes(pilot, "fuel", "grounded");
  await pilot.type("flight-minutes", "60");
  await pilot.type("flight-mean", "22");
  await pilot.type("flight-gust", "26");
  await pilot.type("flight-mostMean", "18");
  await pilot.type("flight-mostGust", "28");
  await becomes(pilot, "wind", "grounded");
  await pilot.page.locator("h1").click();
  await until("the verdict with it", async () => (await pilot.attribute("flight-verdict", "data-state")) === "grounded");
  await pilot.tap("flight-keep");
  await pilot.on("summary");
  await pilot.page.locator('[data-test="to-flight"][data-state="grounded"]').waitFor();
  assert.match(await pilot.says("to-flight"), /above your own limit of 18 km\/h/);
  assert.equal(await pilot.attribute("preview", "data-state"), "grounded");

  // The wind calmed down: fuel and wind alone are typed anew, each tap counted. Three seconds a tap make a minute.
  let taps = 0;
  const tap = async (what) => ((taps += 1), what.click());
  const key = async (text) => {
    for (const one of text) await tap(pilot.of(`key-${one}`));
  };
  await tap(pilot.of("to-flight"));
  await pilot.on("flight");
  await tap(fuel.locator('[data-test="flight-fuel"]'));
  await key("5.5");
  await tap(pilot.of("pad-next"));
  await tap(pilot.of("pad-next"));
  await tap(pilot.of("pad-next"));
  await key("12");
  await tap(pilot.of("pad-next"));
  await key("16");
  await tap(pilot.of("pad-away"));
  await becomes(pilot, "wind", "fit");
  await tap(pilot.of("flight-keep"));
  await pilot.on("summary");
  assert.ok(taps <= 20, `${taps} taps`);
  await pilot.page.locator('[data-test="to-flight"][data-state="fit"]').waitFor();

  await pilot.tap("sign-with-pin");
  await pilot.signWith(PIN);
  await pilot.on("verdict");
  const { card, waiting, timeline } = await pilot.ask("machine", { id: machine });
  assert.equal(waiting, 0, "signed with the list");
  assert.ok(timeline.some(({ kind }) => kind === "flight-planned"));
  assert.ok(!card.verdict.reasons.some(({ rule, state }) => rule === "wind" && state !== "fit"));

  // Before the next flight it is blowing again.
  await pilot.goTo("machine", machine, "flight");
  await pilot.on("flight");
  await pilot.type("flight-gust", "30");
  await pilot.type("flight-mean", "25");
  await becomes(pilot, "wind", "grounded");
  await pilot.page.locator("h1").click();
  await pilot.tap("flight-keep");
  await pilot.on("machine");
  await pilot.goTo("machine", machine, "verdict");
  await pilot.on("verdict");
  await pilot.of("reason-wind").locator("a").first().click();
  await pilot.on("flight");
});

test("units by person, changed in place: what was read in one unit is never taken for another", async (t) => {
  const { machine, pilot } = await beforeSigning(t);
  await describesTheWing(pilot, machine, PIN);
  await pilot.goTo("settings");
  await pilot.on("settings");
  for (const [kind, unit] of [["mass", "lb"], ["speed", "kt"], ["temperature", "degF"], ["pressure", "inHg"], ["height", "ft"]]) {
    await pilot.choose(`unit-${kind}`, unit);
    await until(`${unit} to be kept`, async () => (await pilot.ask("start")).units[kind] === unit);
  }
  await pilot.goTo("machine", machine, "flight");
  await pilot.on("flight");
  assert.equal(await pilot.of("flight-pilot-unit").inputValue(), "lb");
  assert.equal(await pilot.of("flight-machine-unit").inputValue(), "kg", "what is known keeps the unit that it was stated in");
  await pilot.choose("flight-machine-unit", "lb");
  assert.equal(await pilot.of("flight-machine").inputValue(), "", "24 kg are not 24 lb");
  await pilot.type("flight-machine", "53");
  await pilot.type("flight-pilot", "71");
  await pilot.choose("flight-pilot-unit", "kg");
  assert.equal(await pilot.of("flight-pilot").inputValue(), "71", "what was typed was meant in it");
  await pilot.of("flight-part-load").locator('[data-test="flight-fuel"]').fill("6");
  await becomes(pilot, "load", "fit");
  await pilot.tap("flight-open-air");
  // The standard atmosphere's sea level: 29.92 inHg, 59 °F (ISO 2533:1975): as thin as at nought, whatever the units.
  await pilot.type("flight-elevation", "0");
  await pilot.type("flight-setting", "29.92");
  await pilot.type("flight-temperature", "59");
  await becomes(pilot, "air", "fit");
  const feet = Number(/as thin as at (-?[\d.]+) ft/.exec((await pilot.says("flight-part-air")).replace("−", "-"))[1]);
  assert.ok(Math.abs(feet) <= 30, `${feet} ft`);
  await pilot.tap("flight-by-field");
  await pilot.type("flight-pressure", "29.92");
  await becomes(pilot, "air", "fit");
});
