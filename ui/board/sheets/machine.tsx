// One machine: why it may or may not fly, what is open, what falls due, what happened.
import { PaintMark } from "../../src/parts/mark";
import { Reasons } from "../../src/parts/reasons";
import { MeaningShape, StateShape } from "../../src/parts/shape";
import { Some } from "../../src/parts/some";
import { Timeline } from "../../src/parts/timeline";
import { to } from "../../src/route";
import type { Board, DueView, MachinePage, Meaning, OpenView, Standing } from "../../src/types";
import { t } from "../../src/words";
import { useGet } from "../ask";
import { Invented } from "../parts/invented";
import { SheetTitle } from "../sheet";
import type { Place } from "../state";
import { Loading } from "./loading";

export function MachineSheet({ id, board, place }: { id: string; board: Board; place: Place }) {
  const { value, fault, again } = useGet<MachinePage>(`machine/${encodeURIComponent(id)}`);
  if (!value) return <Loading fault={fault} again={again} />;
  const { card, open, due, timeline, job } = value;
  const owner = board.rows.find((row) => row.card.id === id)?.owner;
  return (
    <>
      <SheetTitle over={`${owner ? `${owner} · ` : ""}${card.engine} · ${t("hours", { hours: card.hours })}`}>{card.name}</SheetTitle>
      {card.invented && <Invented />}
      <div class="sign" data-test="verdict" data-state={card.verdict.state}>
        <StateShape state={card.verdict.state} size={56} />
        <PaintMark state={card.verdict.state} />
      </div>
      <h3 class="headline">{card.verdict.headline}</h3>
      <p class="soft">{t("wall-no-permission")}</p>
      <Reasons verdict={card.verdict} machine={id} />
      {open.length > 0 && <OpenMatters machine={id} open={open} may={Boolean(place.signed_in?.may_prepare)} />}
      {job && <Job machine={id} title={job.title} since={job.since} lacks={job.lacks} />}
      <h3>{t("board-due")}</h3>
      {due.length === 0 ? <p class="soft">{t("due-none")}</p> : <Some rows={due.map((item) => <DueRow key={item.record + item.title} item={item} />)} />}
      <h3>{t("wall-happened")}</h3>
      <Timeline entries={timeline} />
    </>
  );
}

function OpenMatters({ machine, open, may }: { machine: string; open: OpenView[]; may: boolean }) {
  return (
    <>
      <h3>{t("wall-open")}</h3>
      <ul class="rows">
        {open.map((one) => (
          <li key={one.point} class="open-row">
            <a class="grow" href={to("record", one.record, one.point)} data-test={`found-${one.point}`}>
              <MeaningShape means={one.means} said />
              <span class="grow">
                <span class="strong">{one.title}</span> <span class="block">{one.words}</span>{" "}
                <span class="block soft">{one.since}</span>
              </span>
            </a>
            {may && one.means === "unserviceable" && (
              <a class="button small" href={to("machine", machine, "defer", one.point)} data-test={`defer-${one.point}`}>
                {t("wall-defer")}<span class="unseen">: {one.title}</span>
              </a>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

function Job({ machine, title, since, lacks }: { machine: string; title: string; since: string; lacks: string[] }) {
  return (
    <>
      <h3>{t("wall-job")}</h3>
      <p><span class="strong">{title}</span> <span class="block soft">{since}</span></p>
      <ul class="plain-list">{lacks.map((lack) => <li key={lack}>{lack}</li>)}</ul>
      <p class="links"><a href={to("second", machine)} data-test="machine-second">{t("wall-second-code")}</a></p>
    </>
  );
}

const MEANS: Record<Standing, Meaning> = { later: "serviceable", soon: "watch", tolerated: "watch", over: "unserviceable" };

function DueRow({ item }: { item: DueView }) {
  return (
    <li>
      <a href={to("record", item.record)} data-test={`due-${item.title}`} data-standing={item.standing}>
        <MeaningShape means={MEANS[item.standing]} />
        <span class="grow">
          <span class="strong">{t(`due-${item.standing}`)} {item.title}</span> <span class="block">{item.left}</span>{" "}
          {item.forecast && <span class="block soft">{item.forecast}</span>}
        </span>
      </a>
    </li>
  );
}
