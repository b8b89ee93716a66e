// The machines: the one that needs a person first stands large, the others beside it.
import { useEffect } from "preact/hooks";
import { call } from "../calls";
import { useAct, useLoad } from "../hooks";
import { FaultNote } from "../parts/fault";
import { Page, Waiting } from "../parts/page";
import { MachinePicture } from "../parts/plan";
import { StateShape } from "../parts/shape";
import { go, to } from "../route";
import { finished, start } from "../state";
import type { MachineCard } from "../types";
import { begun } from "../walking";
import { t } from "../words";
import { AfterFlight } from "./machine-deeds";
import { SchoolLine } from "./school/home-line";

/** The list that the large button walks. */
const MAIN_LIST = "before-flight";

export function Machines() {
  const { value, fault, again, put } = useLoad("machines", {});
  useEffect(() => void (finished.value = null), []);
  if (!value) return <Waiting screen="machines" fault={fault} again={again} />;
  const [first, ...others] = value;
  const warning = start.value?.warning;
  return (
    <Page
      screen="machines"
      title={t("machines-title")}
      over={start.value?.person ? t("machines-over", { name: start.value.person.name }) : undefined}
      picture={<MachinePicture />}
      foot={
        first && (
          <>
            <WalkButton card={first} />
            <AfterFlight machine={first.id} work={!working(first)} />
          </>
        )
      }
    >
      <SchoolLine />
      {warning && <p class="banner" role="status">{warning}</p>}
      {first ? <Large card={first} /> : <Empty onDemo={put} />}
      {others.length > 0 && (
        <ul class="rows machines" aria-label={t("machines-others")}>
          {others.map((card) => (
            <li key={card.id}>
              <Small card={card} />
            </li>
          ))}
        </ul>
      )}
      <nav class="links" aria-label={t("machines-more")}>
        <a href={to("machine", "new")} data-test="add-machine">{t("machines-add")}</a>
        <a href={to("code")} data-test="to-code">{t("code-open")}</a>
        <a href={to("look")} data-test="to-look">{t("machines-look")}</a>
        <a href={to("school")} data-test="to-school">{t("school")}</a>
        <a href={to("tools")} data-test="to-tools">{t("tool-list")}</a>
        <a href={to("fleet")} data-test="to-fleet">{t("fleet-title")}</a>
        <a href={to("verify")} data-test="to-verify">{t("machines-verify")}</a>
        <a href={to("settings")} data-test="to-settings">{t("machines-settings")}</a>
      </nav>
    </Page>
  );
}

/** Whether work on it isn't released yet. */
const working = (card: MachineCard) => card.verdict.reasons.some((reason) => reason.rule === "job-open");

function WalkButton({ card }: { card: MachineCard }) {
  const walk = begun(card.walk);
  if (!walk && working(card))
    return <a class="button go" href={to("machine", card.id)} data-test="go-on-working">{t("job-deeds")}</a>;
  return (
    <a class="button go" href={walk ? to("walk", card.id, walk.occasion, "on") : to("walk", card.id, MAIN_LIST)} data-test="walk">
      {walk
        ? t("machines-walk-on", { machine: card.name, done: walk.done, of: walk.of })
        : t("machines-walk", { machine: card.name })}
    </a>
  );
}

function Large({ card }: { card: MachineCard }) {
  return (
    <article class="large" data-test={`machine-${card.id}`}>
      <div class="line">
        <h2>
          <a href={to("machine", card.id)} data-test={`open-${card.id}`}>{card.name}</a>
        </h2>
        <span class="num">{t("hours", { hours: card.hours })}</span>
      </div>
      {card.invented && <Invented />}
      <a class="verdict-line" href={to("machine", card.id, "verdict")} data-test={`verdict-${card.id}`} data-state={card.verdict.state}>
        <StateShape state={card.verdict.state} />
        <span class="headline">{card.verdict.headline}</span>
      </a>
      {card.verdict.reasons.slice(0, 2).map((reason, index) => (
        <p key={index} class="soft">{reason.words}</p>
      ))}
    </article>
  );
}

function Small({ card }: { card: MachineCard }) {
  const walk = begun(card.walk);
  return (
    <a href={to("machine", card.id)} data-test={`machine-${card.id}`} data-state={card.verdict.state}>
      <StateShape state={card.verdict.state} />
      <span class="grow">
        <span class="line">
          <span class="strong">{card.name}</span>
          <span class="num soft">{t("hours", { hours: card.hours })}</span>
        </span>
        <span class="block">{card.verdict.headline}</span>
        {walk && <span class="block soft">{t("machines-walking", { done: walk.done, of: walk.of })}</span>}
        {card.invented && <Invented />}
      </span>
    </a>
  );
}

export function Invented() {
  return <span class="invented">{t("invented")}</span>;
}

function Empty({ onDemo }: { onDemo: (cards: MachineCard[]) => void }) {
  const { busy, fault, act, again } = useAct();
  return (
    <div class="empty" data-test="empty">
      <p>{t("empty-what")}</p>
      <button type="button" class="go" onClick={() => go("machine", "new")} data-test="empty-add">
        {t("empty-add")}
      </button>
      <button
        type="button"
        aria-disabled={busy}
        onClick={() => act(async () => onDemo(await call("demo", {})))}
        data-test="empty-demo"
      >
        {t("empty-demo")}
      </button>
      <p class="soft">{t("empty-demo-what")}</p>
      <FaultNote fault={fault} again={again} />
    </div>
  );
}
