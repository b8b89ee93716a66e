// Whose board it is, whether it is live, who looks, and the way to what stands beside the machines.
import { useAct } from "../src/hooks";
import { FaultNote } from "../src/parts/fault";
import { to } from "../src/route";
import type { Board } from "../src/types";
import { language, t } from "../src/words";
import { post } from "./ask";
import { drafts, live, signedOut, type Place } from "./state";

export function Top({ board, place }: { board: Board; place: Place }) {
  return (
    <header class="wall-top">
      <div class="wall-name">
        <p class="soft">{t("wall-title")}</p>
        <h1>{board.school?.name ?? place.school}</h1>
      </div>
      <nav aria-label={t("wall-beside")}>
        <ul class="links">
          <li><a href={to("members")} data-test="to-members">{t("board-people")}</a></li>
          <li><a href={to("second")} data-test="to-second">{t("wall-second", { count: board.second.length })}</a></li>
          <li><a href={to("fleet")} data-test="to-fleet">{t("wall-lives")}</a></li>
          <li><a href={to("worth")} data-test="to-worth">{t("wall-worth")}</a></li>
          {place.signed_in?.role === "instructor" && <li><a href={to("looking")} data-test="to-looking">{t("wall-looking")}</a></li>}
          {place.signed_in?.may_prepare && (
            <>
              <li><a href={to("prepared")} data-test="to-prepared">{t("wall-prepared", { count: drafts.value.length })}</a></li>
              <li><a href={to("publish")} data-test="to-publish">{t("wall-publish")}</a></li>
            </>
          )}
        </ul>
      </nav>
      <Who place={place} />
      <LiveSign />
    </header>
  );
}

const clock = (at: Date) => new Intl.DateTimeFormat(language.value, { hour: "2-digit", minute: "2-digit" }).format(at);

/** A shape that isn't whole where the connection isn't. */
function LiveSign() {
  const { state, since } = live.value;
  return (
    <p role="status" class={`live ${state}`} data-test="live" data-state={state}>
      <svg viewBox="0 0 60 20" aria-hidden="true">
        <path d={state === "live" ? "M4 15L56 5" : "M4 15L24 11M38 12L56 3"} />
      </svg>
      {t(`wall-live-${state}`, { time: clock(since) })}
    </p>
  );
}

function Who({ place: { signed_in } }: { place: Place }) {
  const { busy, fault, act, again } = useAct();
  const out = () =>
    act(async () => {
      await post("sign-out", {});
      signedOut();
    });
  return (
    <div class="who">
      <p data-test="who">
        <span class="strong">{signed_in?.name ?? t("wall-by-passphrase")}</span>
        <span class="soft">{signed_in?.role ? t(`wall-role-${signed_in.role}`) : t("wall-look-only")}</span>
      </p>
      <button type="button" class="small" aria-disabled={busy} onClick={out} data-test="sign-out">{t("wall-sign-out")}</button>
      <FaultNote fault={fault} again={again} />
    </div>
  );
}
