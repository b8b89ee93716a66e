// What you prepared here and haven't signed yet.
import { useAct } from "../../src/hooks";
import { Code } from "../../src/parts/code";
import { FaultNote } from "../../src/parts/fault";
import type { Board } from "../../src/types";
import { language, t } from "../../src/words";
import { post } from "../ask";
import { lookAtDrafts } from "../live";
import { SheetTitle } from "../sheet";
import { drafts, type Draft } from "../state";

export function Prepared({ board }: { board: Board }) {
  return (
    <>
      <SheetTitle>{t("wall-prepared-title")}</SheetTitle>
      <p>{t(drafts.value.length > 0 ? "wall-sign-there-how" : "wall-prepared-none")}</p>
      {drafts.value.map((draft) => <Waiting key={draft.id} draft={draft} board={board} />)}
    </>
  );
}

const moment = (at: Date) => new Intl.DateTimeFormat(language.value, { dateStyle: "medium", timeStyle: "short" }).format(at);

function Waiting({ draft, board }: { draft: Draft; board: Board }) {
  const { busy, fault, act, again } = useAct();
  const drop = () =>
    act(async () => {
      await post("drafts/drop", { id: draft.id });
      await lookAtDrafts();
    });
  return (
    <section class="card" data-test={`prepared-${draft.id}`}>
      <h3>{titleOf(draft, board)}</h3>
      <p class="soft">{moment(new Date(draft.made * 1000))}</p>
      <Code code={draft.code} words={t("wall-sign-there-code")} />
      <button type="button" class="small" aria-disabled={busy} onClick={drop} data-test={`drop-${draft.id}`}>{t("wall-take-back")}</button>
      <FaultNote fault={fault} again={again} />
    </section>
  );
}

function titleOf({ machine, body }: Draft, board: Board): string {
  const row = board.rows.find(({ card }) => card.id === machine);
  if (!machine) return t("wall-draft-publication", { title: body.title ?? "", version: body.version ?? 1 });
  const matter = row?.defects.find(({ point }) => point === body.point);
  return t("wall-draft-deferral", { machine: row?.card.name ?? "", title: matter?.title ?? body.point ?? "" });
}
