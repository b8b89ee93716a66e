// Load, fuel, air and wind before a flight: five questions, each answered or left out, each judged as it is typed.
import { useRef, useState } from "preact/hooks";
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useAct, useLoad } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Page, Waiting } from "../../parts/page";
import { StateShape } from "../../parts/shape";
import { to, turnTo } from "../../route";
import { announce } from "../../state";
import type { FlightForm, FlightView } from "../../types";
import { t } from "../../words";
import { AirPart } from "./air";
import type { Sheet } from "./amount";
import { type Draft, draftOf, type Part, PARTS, still } from "./draft";
import { FuelPart } from "./fuel";
import { useJudged } from "./judged";
import { Load } from "./load";
import { MixPart } from "./mix";
import { Pad, usePad, useRoomForKeys } from "./pad";
import { PartOf, Result, type Standing } from "./part";
import { made, type Made } from "./plan";
import { WindPart } from "./wind";

/** `occasion` is the list that waits to be signed, where one does. */
export function Flight({ machine, occasion }: { machine: string; occasion: string | undefined }) {
  const { value, fault, again } = useLoad("flight-form", { machine });
  const place = occasion ? ["walk", machine, occasion, "summary"] : ["machine", machine];
  const back = { href: to(...place), words: t(occasion ? "summary-title" : "to-machine") };
  if (!value) return <Waiting screen="flight" fault={fault} again={again} back={back} />;
  return <Prepare form={value} place={place} back={{ ...back, words: occasion ? back.words : value.machine_name }} />;
}

/** What changes from flight to flight lies open; the others open where they lack something. */
const ALWAYS_OPEN: Part[] = ["fuel", "wind"];

function Prepare({ form, place, back }: { form: FlightForm; place: string[]; back: { href: string; words: string } }) {
  const known = draftOf(form);
  const [kept, setDraft, done] = useDraft<Draft>(`flight/${form.machine}`, known);
  const draft = still(kept, known);
  const put = (change: Partial<Draft>) => setDraft({ ...draft, ...change });
  const plan = made(draft, form);
  const judged = useJudged(form.machine, plan);
  const keep = useAct();
  const box = useRef<HTMLFormElement>(null);
  const room = useRoomForKeys();
  const pad = usePad(box, room);
  const parts = PARTS.filter((part) => (part !== "mix" || form.mixes) && (part !== "fuel" || form.burns_fuel));
  const [open, setOpen] = useState<Part[]>(() =>
    parts.filter((part) => draft.asked[part] && (ALWAYS_OPEN.includes(part) || plan.lacks[part] !== undefined)),
  );
  const here = pad.input?.closest<HTMLElement>("[data-part]")?.dataset["part"] as Part | undefined;
  const standing = (part: Part): Standing => standingOf(part, draft, form, plan, judged.view);
  const ask = (part: Part, asked: boolean) => put({ asked: { ...draft.asked, [part]: asked } });
  const toggle = (part: Part, opened: boolean) => {
    setOpen(opened ? [...open, part] : open.filter((one) => one !== part));
    if (opened) ask(part, true);
  };

  const onKeep = () =>
    keep.act(async () => {
      const lacking = parts.find((part) => plan.lacks[part] !== undefined);
      if (lacking) {
        if (!open.includes(lacking)) setOpen([...open, lacking]);
        throw { kind: "flight-lacks", message: `${t(`flight-part-${lacking}`)} ${lackWords(lacking, form, plan)}`, hint: t("flight-lacks-hint") };
      }
      await call("flight-keep", { machine: form.machine, plan: plan.plan });
      done();
      announce(t("flight-kept"));
      turnTo(...place);
    });

  const sheet: Sheet = { draft, put, keys: room };
  return (
    <Page
      screen="flight"
      title={t("flight")}
      over={form.machine_name}
      back={back}
      foot={
        pad.input ? (
          <Pad input={pad.input} form={box} pad={pad.pad} onLeave={pad.leave}>
            {here && <Result standing={standing(here)} />}
          </Pad>
        ) : (
          <>
            <FaultNote fault={keep.fault ?? judged.fault} again={keep.fault ? undefined : judged.again} />
            {judged.view && <Verdict view={judged.view} />}
            <button type="button" class="go" aria-disabled={keep.busy} onClick={onKeep} data-test="flight-keep">
              {t("flight-keep")}
            </button>
            <p class="soft">{t("flight-keep-means")}</p>
          </>
        )
      }
    >
      <p class="soft">{t("flight-what")}</p>
      <form ref={box} class="flight" onSubmit={(event) => event.preventDefault()}>
        {parts.map((part) => (
          <div key={part} data-part={part}>
            <PartOf
              part={part}
              standing={standing(part)}
              open={open.includes(part) && draft.asked[part]}
              onOpen={(opened) => toggle(part, opened)}
              onAsked={(asked) => (ask(part, asked), asked || setOpen(open.filter((one) => one !== part)))}
            >
              {part === "load" && <Load form={form} sheet={sheet} />}
              {part === "mix" && <MixPart form={form} sheet={sheet} pour={judged.view?.pour ?? null} />}
              {part === "fuel" && <FuelPart form={form} sheet={sheet} />}
              {part === "air" && <AirPart form={form} sheet={sheet} />}
              {part === "wind" && <WindPart form={form} sheet={sheet} />}
            </PartOf>
          </div>
        ))}
      </form>
      <p class="soft">{t("flight-reminders")}</p>
    </Page>
  );
}

function lackWords(part: Part, form: FlightForm, plan: Made): string {
  return plan.lacks[part] || (part === "load" && !form.wing ? t("flight-no-wing") : "");
}

function standingOf(part: Part, draft: Draft, form: FlightForm, plan: Made, view: FlightView | null): Standing {
  const lacks = plan.lacks[part] === undefined ? undefined : lackWords(part, form, plan);
  return {
    asked: draft.asked[part],
    reason: lacks === undefined ? view?.parts.find((one) => one.part === part)?.reason : undefined,
    fault: lacks ?? view?.faults.find((one) => one.part === part)?.words,
  };
}

/** What the machine is with this plan, in a line over the thumb. */
function Verdict({ view: { verdict } }: { view: FlightView }) {
  return (
    <p class="flight-verdict" role="status" data-test="flight-verdict" data-state={verdict.state}>
      <StateShape state={verdict.state} size={24} />
      <span class="grow">
        <span class="unseen">{t("flight-verdict")} </span>
        {verdict.headline}
      </span>
    </p>
  );
}
