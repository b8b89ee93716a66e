// One machine: may it fly, what is open, what happened, what its engine's limits are.
import { useEffect } from "preact/hooks";
import { useLoad } from "../hooks";
import { Page, Waiting } from "../parts/page";
import { PaintMark } from "../parts/mark";
import { MachinePicture } from "../parts/plan";
import { MeaningShape, StateShape } from "../parts/shape";
import { Timeline } from "../parts/timeline";
import { to } from "../route";
import { finished } from "../state";
import type { LimitView, MachinePage, OpenView } from "../types";
import { t } from "../words";
import { ComponentRows } from "./component/rows";
import { DueRows } from "./due/rows";
import { Export } from "./export";
import { FlightRow } from "./flight/row";
import { OpenJob } from "./job/open-job";
import { Invented } from "./machines";
import { Deeds } from "./machine-deeds";
import { MachinePapers } from "./papers";
import { EnrolledRow } from "./school/enrol";
import { Drifts } from "./trends/drifts";

export function MachineScreen({ id }: { id: string }) {
  const { value, fault, again } = useLoad("machine", { id });
  useEffect(() => void (finished.value = null), []);
  const back = { href: "#/", words: t("to-machines") };
  if (!value) return <Waiting screen="machine" fault={fault} again={again} back={back} />;
  const { card, open, timeline, limits } = value;
  return (
    <Page
      screen="machine"
      title={card.name}
      over={t("machine-over", { engine: card.engine, hours: card.hours, flights: card.flights })}
      back={back}
      picture={<Judgement page={value} />}
      foot={<Deeds page={value} />}
    >
      {value.waiting > 0 && <p class="soft" data-test="waiting">{t("log-waiting", { count: value.waiting })}</p>}
      <OpenJob page={value} />
      <FlightRow machine={id} />
      {open.length > 0 && (
        <section aria-labelledby="open">
          <h2 id="open">{t("machine-open")}</h2>
          <ul class="rows">
            {open.map((matter) => (
              <OpenRow key={matter.point + matter.record} machine={id} matter={matter} />
            ))}
          </ul>
        </section>
      )}
      <DueRows machine={id} due={value.due} />
      <Drifts machine={id} />
      <section aria-labelledby="timeline">
        <h2 id="timeline">{t("machine-timeline")}</h2>
        {timeline.length === 0 ? <p class="soft">{t("machine-timeline-none")}</p> : <Timeline entries={timeline} />}
      </section>
      <ComponentRows machine={id} components={value.components} />
      <section aria-labelledby="limits">
        <h2 id="limits">{t("machine-limits")}</h2>
        <ul class="rows">
          {limits.map((limit) => (
            <LimitRow key={limit.band} machine={id} limit={limit} />
          ))}
        </ul>
      </section>
      <EnrolledRow machine={id} />
      <MachinePapers machine={id} />
      {value.description.note && <p class="noted">{value.description.note}</p>}
      <nav class="links" aria-label={t("machines-more")}>
        <a href={to("machine", id, "edit")} data-test="edit">{t("machine-edit")}</a>
        <a href={to("tools")} data-test="to-tools">{t("tool-list")}</a>
        <Export machine={id} />
      </nav>
    </Page>
  );
}

function Judgement({ page: { card } }: { page: MachinePage }) {
  return (
    <div class={`judgement ${card.verdict.state}`}>
      {card.invented && <Invented />}
      <a class="sign-line" href={to("machine", card.id, "verdict")} data-test="to-verdict" data-state={card.verdict.state}>
        <span class="sign">
          <StateShape state={card.verdict.state} size={64} />
          <PaintMark state={card.verdict.state} />
        </span>
        <span class="headline">{card.verdict.headline}</span>
        {card.verdict.reasons.length > 0 && (
          <span class="soft underlined">{t("machine-why", { count: card.verdict.reasons.length })}</span>
        )}
      </a>
      <div class="wide">
        <MachinePicture />
      </div>
    </div>
  );
}

function OpenRow({ machine, matter }: { machine: string; matter: OpenView }) {
  return (
    <li class="open-row">
      <a class="grow" href={to("record", matter.record, matter.point)}>
        <MeaningShape means={matter.means} said />
        <span class="grow">
          <span class="strong">{matter.title}</span> <span class="block">{matter.words}</span>{" "}
          <span class="block soft">{matter.since}</span>
        </span>
      </a>
      {matter.means === "unserviceable" && (
        <a class="button small" href={to("machine", machine, "defer", matter.point)} data-test={`defer-${matter.point}`}>
          {t("defer-may-wait")}
          <span class="unseen">: {matter.title}</span>
        </a>
      )}
      <a class="button small" href={to("machine", machine, "right", matter.point)} data-test={`put-right-${matter.point}`}>
        {t("put-right")}
        <span class="unseen">: {matter.title}</span>
      </a>
    </li>
  );
}

function LimitRow({ machine, limit }: { machine: string; limit: LimitView }) {
  return (
    <li>
      <a href={to("machine", machine, "limit", limit.band)} data-test={`limit-${limit.band}`} data-confirmed={limit.confirmed}>
        <span class="grow">
          <span class="line">
            <span class="strong">{limit.words}</span>
            <span class="num">{limit.value}</span>
          </span>
          {limit.critical && <span class="block">{t("limit-critical")}</span>}
          <span class={`block soft ${limit.confirmed ? "" : "unconfirmed"}`}>{limit.source}</span>
        </span>
      </a>
    </li>
  );
}
