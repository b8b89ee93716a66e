// Time in service after landing: one tap on how long it was; typed or read off the meter otherwise.
import { useEffect, useRef, useState } from "preact/hooks";
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useAct, useLoad } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Page, Waiting } from "../../parts/page";
import { MachinePicture } from "../../parts/plan";
import { to } from "../../route";
import type { MachinePage, Service } from "../../types";
import { t } from "../../words";
import { Burned, burnedOf, ownVolume } from "./burned";
import { OtherWays } from "./other";

const MINUTES = [15, 20, 30, 45, 60];

export type Log = (entry: { added: Service | null; reading: number | null; note: string; words: string }) => Promise<boolean>;

export function LogTime({ machine }: { machine: string }) {
  const { value, fault, again, put } = useLoad("machine", { id: machine });
  const [tank, setTank] = useDraft(`log/${machine}/tank`, false);
  const [burned, setBurned, doneBurned] = useDraft(`log/${machine}/burned`, { text: "", unit: ownVolume() });
  const [other, setOther] = useState(false);
  const [logged, setLogged] = useState("");
  const deed = useAct();
  const foot = useRef<HTMLDivElement>(null);
  const first = useRef(true);
  // What was tapped is gone then; the keys go on from what took its place.
  useEffect(() => {
    if (!first.current) foot.current?.querySelector<HTMLElement>("a, button")?.focus();
    first.current = false;
  }, [logged, other]);
  const back = { href: to("machine", machine), words: value?.card.name ?? t("to-machine") };
  if (!value) return <Waiting screen="log" fault={fault} again={again} back={back} />;

  const log: Log = async ({ words, ...entry }) => {
    let kept = false;
    await deed.act(async () => {
      put(await call("log-time", { machine, ...entry, fuel: burnedOf(burned) }));
      kept = true;
      setTank(false);
      doneBurned();
      setBurned({ ...burned, text: "" });
      setOther(false);
      setLogged(words);
    });
    return kept;
  };
  const flown = (minutes: number) =>
    log({ added: { hours: minutes / 60, flights: 1, tanks: tank ? 1 : 0 }, reading: null, note: "", words: t("log-flown", { minutes }) });
  const undo = () =>
    deed.act(async () => {
      put(await call("log-undo", { machine }));
      setLogged("");
    });

  return (
    <Page
      screen="log"
      title={t("log-title", { machine: value.card.name })}
      back={back}
      picture={other ? undefined : <MachinePicture />}
      foot={
        <div class="foot-rows" ref={foot}>
          <FaultNote fault={deed.fault} />
          {logged ? (
            <Done machine={machine} busy={deed.busy} onUndo={undo} />
          ) : other ? (
            <button type="button" onClick={() => setOther(false)} data-test="log-times">{t("log-times")}</button>
          ) : (
            <>
              <label class="choice switch">
                <input type="checkbox" role="switch" checked={tank} onChange={(event) => setTank(event.currentTarget.checked)} data-test="tank" />
                <span class="grow">{t("log-tank")}</span>
              </label>
              <div class="durations" role="group" aria-label={t("log-how-long")}>
                {MINUTES.map((minutes) => (
                  <button key={minutes} type="button" class="duration" aria-disabled={deed.busy} onClick={() => flown(minutes)} data-test={`minutes-${minutes}`}>
                    <Clock minutes={minutes} />
                    <span>{t("log-minutes", { minutes })}</span>
                  </button>
                ))}
                <button type="button" class="duration" onClick={() => setOther(true)} data-test="log-other">
                  <Clock minutes={0} />
                  <span>{t("log-other")}</span>
                </button>
              </div>
            </>
          )}
        </div>
      }
    >
      <Now page={value} logged={logged} />
      {!logged && <Burned burned={burned} onBurned={setBurned} />}
      {other && !logged && <OtherWays machine={machine} busy={deed.busy} onBegin={deed.forget} onLog={log} />}
    </Page>
  );
}

function Now({ page, logged }: { page: MachinePage; logged: string }) {
  return (
    <>
      <div class="big-value num" data-test="log-now">{t("hours", { hours: page.card.hours })}</div>
      <p>{t("log-total", { flights: page.card.flights, tanks: page.tanks })}</p>
      <div role="status" data-test="logged">
        {logged && <p class="banner">{t("log-kept", { words: logged })}</p>}
      </div>
      {page.waiting > 0 && <p class="soft" data-test="waiting">{t("log-waiting", { count: page.waiting })}</p>}
      {!logged && <p>{t("log-how-long")}</p>}
    </>
  );
}

function Done({ machine, busy, onUndo }: { machine: string; busy: boolean; onUndo: () => void }) {
  return (
    <>
      <a class="button go" href={to("machine", machine)} data-test="log-done">{t("log-done")}</a>
      <button type="button" aria-disabled={busy} onClick={onUndo} data-test="log-undo">{t("log-undo")}</button>
    </>
  );
}

/** The minutes as a sector of the dial. */
function Clock({ minutes }: { minutes: number }) {
  const angle = (Math.min(minutes, 59.9) / 60) * 2 * Math.PI;
  const [x, y] = [16 + 12 * Math.sin(angle), 16 - 12 * Math.cos(angle)];
  return (
    <svg class="turn" viewBox="0 0 32 32" aria-hidden="true">
      <circle cx="16" cy="16" r="12" />
      {minutes > 0 ? <path d={`M16 16V4A12 12 0 ${angle > Math.PI ? 1 : 0} 1 ${x} ${y}Z`} /> : <path class="hands" d="M16 9V16L21 19" />}
    </svg>
  );
}
