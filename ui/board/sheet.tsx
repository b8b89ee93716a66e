// A sheet beside the machines: what the address names.
import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { go } from "../src/route";
import type { Board } from "../src/types";
import { t } from "../src/words";
import { DeferSheet } from "./sheets/defer";
import { FleetSheet } from "./sheets/fleet";
import { LifeSheet } from "./sheets/life";
import { LookingSheet } from "./sheets/looking";
import { MachineSheet } from "./sheets/machine";
import { Members } from "./sheets/members";
import { Prepared } from "./sheets/prepared";
import { Publish } from "./sheets/publish";
import { RecordSheet } from "./sheets/record";
import { SecondSheet } from "./sheets/second";
import { WorthSheet } from "./sheets/worth";
import type { Place } from "./state";

export function Sheet({ parts, board, place }: { parts: string[]; board: Board; place: Place }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const scroll = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!dialog.current?.open) dialog.current?.showModal();
    // What is come to anew is read from its beginning.
    scroll.current?.scrollTo(0, 0);
  }, [parts.join("/")]);
  return (
    <dialog
      ref={dialog}
      class="side"
      aria-labelledby="sheet-title"
      data-test="sheet"
      data-sheet={parts[0]}
      onClose={() => go()}
      onClick={(event) => event.target === event.currentTarget && dialog.current?.close()}
    >
      <div class="side-inside" ref={scroll}>
        <Content parts={parts} board={board} place={place} />
      </div>
      <div class="side-foot">
        <button type="button" onClick={() => dialog.current?.close()} data-test="close">{t("wall-close")}</button>
      </div>
    </dialog>
  );
}

function Content({ parts, board, place }: { parts: string[]; board: Board; place: Place }) {
  const [kind, id, deed, what] = parts;
  if (kind === "machine" && id && deed === "defer" && what) return <DeferSheet machine={id} point={what} />;
  if (kind === "machine" && id) return <MachineSheet key={id} id={id} place={place} board={board} />;
  if (kind === "record" && id) return <RecordSheet key={id} digest={id} point={deed} />;
  if (kind === "second") return <SecondSheet board={board} machine={id} />;
  if (kind === "members") return <Members board={board} />;
  if (kind === "prepared") return <Prepared board={board} />;
  if (kind === "publish") return <Publish />;
  if (kind === "fleet") return id ? <LifeSheet key={id} component={id} /> : <FleetSheet />;
  if (kind === "looking") return <LookingSheet />;
  if (kind === "worth") return <WorthSheet />;
  return <SheetTitle>{t("wall-nothing-there")}</SheetTitle>;
}

/** What comes is read out from its title on; also when it came after a moment's waiting. */
export function SheetTitle({ over, children }: { over?: ComponentChildren; children: ComponentChildren }) {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);
  return (
    <div class="side-title">
      {over && <p class="soft">{over}</p>}
      <h2 id="sheet-title" ref={title} tabIndex={-1}>{children}</h2>
    </div>
  );
}
