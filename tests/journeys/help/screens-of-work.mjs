// The screens of work on a machine, each in every state that looks different, and the way to them.
import { BENCH } from "./screens-of-bench.mjs";
import { PIN } from "./pilot.mjs";
import { fit, registered, signed, tooled, walked, worked } from "./prepared.mjs";
import { SECOND } from "./screens-of-second-look.mjs";
import { place } from "./ways.mjs";

/** Machines on which work has come to different points; and one elsewhere whose owner asks for a second look. */
export function populateWork(here, elsewhere) {
  const quiet = registered(here, "Quiet bramble");
  walked(here, quiet, { "cage-net": "torn" });
  signed(here, "due", "keep", quiet, "Grease the starter's pulley", "--every-hours", "25", "--every-days", "365");
  signed(here, "due", "keep", quiet, "New spark plug", "--every-hours", "25", "--done-hours", "10", "--done-flights", "9");
  signed(here, "component", "fit", quiet, "propeller", "Blue blade", "--serial", "P-7", "--hours", "30", "--flights", "50");
  tooled(here);
  tooled(here, "Grandfather's wrench", 900);
  const bench = fit(here, "Field bramble");
  worked(here, bench, ["head-retorqued"]);
  const numberless = registered(here, "Marsh bramble");
  worked(here, numberless, ["head-retorqued", "propeller-retorqued"]);
  const looked = fit(here, "Hill bramble");
  worked(here, looked, ["head-retorqued"], { looked: true });

  const other = fit(elsewhere, "Orchard bramble");
  tooled(elsewhere);
  worked(elsewhere, other, ["head-retorqued"], { looked: true });
  return { quiet, bench, numberless, looked, asked: elsewhere.cli("second-look", "ask", other).said.text };
}

/** A row of the machine's page, tapped. */
const row = (screen, machine, beginning, more) => async (pilot, ids) => {
  await place("machine", "machine", machine)(pilot, ids);
  const [name] = await pilot.named(beginning, more);
  await pilot.tap(name);
  await pilot.on(screen);
};

const KEPT = [
  ["machine-with-all", place("machine", "machine", "quiet")],
  ["defer", place("defer", "machine", "quiet", "defer", "cage-net")],
  [
    "defer-refused",
    async (pilot, ids) => {
      await place("defer", "machine", "quiet", "defer", "cage-net")(pilot, ids);
      await pilot.type("defer-reason", "A spare net is on its way");
      await pilot.sign();
      await pilot.fault();
    },
  ],
  ["due-new", place("due", "machine", "quiet", "due", "new")],
  ["due", row("due", "quiet", "due-", "[data-standing=later]")],
  ["component-new", place("component-new", "machine", "quiet", "component", "new")],
  ["component", row("component", "quiet", "component-", "[data-fitted]")],
  ["torque-tools", place("torque-tools", "tools")],
  ["tool-form", place("tool-form", "tools", "new")],
  [
    "tool-form-known",
    async (pilot, ids) => {
      await place("torque-tools", "tools")(pilot, ids);
      const [name] = await pilot.named("tool-", "[data-usable=false]");
      await pilot.tap(name);
      await pilot.on("tool-form");
    },
  ],
  ["code", place("code", "code")],
];

const LOGGED = [
  ["log", place("log", "machine", "quiet", "log")],
  [
    "log-typed-wrong",
    async (pilot, ids) => {
      await place("log", "machine", "quiet", "log")(pilot, ids);
      await pilot.tap("log-other");
      await pilot.type("log-hours", "half");
      await pilot.tap("log-typed");
      await pilot.fault();
    },
  ],
  [
    "logged",
    async (pilot, ids) => {
      await place("log", "machine", "quiet", "log")(pilot, ids);
      await pilot.tap("minutes-45");
      await pilot.of("log-undo").waitFor();
    },
  ],
];

const planned = (...jobs) => async (pilot, ids) => {
  await place("work", "machine", "quiet", "work")(pilot, ids);
  for (const job of jobs) await pilot.of(`job-${job}`).check();
  await pilot.tap("to-plan");
  await pilot.on("plan");
};

const BEGUN = [
  ["work", place("work", "machine", "quiet", "work")],
  ["plan", planned("cylinder-off", "propeller-changed")],
  [
    "plan-going-back",
    async (pilot, ids) => {
      await planned("cylinder-off")(pilot, ids);
      await pilot.tap("order-back");
    },
  ],
  ["work-open", place("work", "machine", "bench", "work")],
  ["machine-worked-on", place("machine", "machine", "bench")],
  ["walk-map-after-service", place("walk-map", "walk", "bench", "after-service")],
];

const RELEASED = [
  ["release-lacks", place("release", "machine", "bench", "release")],
  ["release", place("release", "machine", "looked", "release")],
  [
    "verdict-released",
    async (pilot, ids) => {
      const { job } = await pilot.ask("machine", { id: ids.looked });
      if (job) await pilot.ask("job-release", { machine: ids.looked, pin: PIN });
      await place("verdict", "machine", "looked", "verdict")(pilot, ids);
    },
  ],
  ["record-second-look", row("record", "looked", "entry-second-look")],
  ["record-job-released", row("record", "looked", "entry-job-released")],
  [
    "machine-tank-over",
    async (pilot, ids) => {
      const added = { hours: 1.5, flights: 2, tanks: 1 };
      await pilot.ask("log-time", { machine: ids.looked, added, reading: null, note: "" });
      await place("machine", "machine", "looked")(pilot, ids);
    },
  ],
  ["verdict-tank-over", place("verdict", "machine", "looked", "verdict")],
];

export const WORK = [...KEPT, ...LOGGED, ...BEGUN, ...BENCH, ...SECOND, ...RELEASED];
