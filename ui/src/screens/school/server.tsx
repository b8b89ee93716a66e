// How it stands with the server, laid open: what waits, what it wouldn't take, and whether it tells the truth.
import { useState } from "preact/hooks";
import { call } from "../../calls";
import { useAct } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { heard, lookAtSchool, useSchool } from "../../school";
import type { ReceiptsView, SyncView } from "../../types";
import { t } from "../../words";
import { ReceiptsResult } from "./receipts-result";
import { SyncCard } from "./sync-card";

export function ServerScreen() {
  const { value, fault, again } = useSchool();
  const sync = useAct();
  const back = { href: to("school"), words: value?.school?.name ?? t("school") };
  if (!value) return <Waiting screen="server" fault={fault} again={again} back={back} />;
  const address = value.school?.address;
  const lies = value.sync.state === "distrusted";
  const round = () =>
    sync.act(async () => {
      try {
        await call("sync", {});
      } finally {
        // However it ended, it is told.
        await lookAtSchool();
      }
    });
  return (
    <Page
      screen="server"
      title={t("server-title")}
      over={address ? <span class="mono">{address}</span> : t("server-none")}
      back={back}
      picture={<SyncCard sync={value.sync} />}
      foot={
        lies ? undefined : address ? (
          <>
            <FaultNote fault={sync.fault?.kind === "server-unreachable" ? null : sync.fault} />
            <button type="button" class="go" aria-disabled={sync.busy} onClick={round} data-test="sync-now">
              {t(sync.busy ? "sync-busy" : "sync-now")}
            </button>
          </>
        ) : (
          <a class="button" href={to("school", "address")} data-test="to-address">{t("address-of-server")}</a>
        )
      }
    >
      <p role="status" class="unseen">{sync.busy ? t("sync-busy") : value.sync.words}</p>
      <Stuck sync={value.sync} />
      {address && <Truth lies={lies} sync={value.sync} />}
      <nav class="links" aria-label={t("machines-more")}>
        <a href={to("school", "refused")} data-test="to-refused">{t("refused")}</a>
        {address && <a href={to("school", "address")} data-test="to-address">{t("address-change")}</a>}
      </nav>
    </Page>
  );
}

function Stuck({ sync }: { sync: SyncView }) {
  const { busy, fault, act, again } = useAct();
  if (sync.stuck.length === 0) return null;
  return (
    <section aria-labelledby="stuck">
      <h2 id="stuck">{t("stuck", { count: sync.stuck.length })}</h2>
      <p class="soft">{t("stuck-what")}</p>
      <ul class="reasons">
        {sync.stuck.map((one) => (
          <li key={one.record} class="reason" data-test="stuck">
            <a href={to("record", one.record)}><span class="strong">{one.kind}</span></a>
            <p>{one.words}</p>
          </li>
        ))}
      </ul>
      <FaultNote fault={fault} again={again} />
      <button type="button" aria-disabled={busy} onClick={() => act(async () => heard(await call("sync-retry", {})))} data-test="sync-retry">
        {t("stuck-retry")}
      </button>
    </section>
  );
}

/** The server keeps the log, this device keeps receipts: each can be held against the other. */
function Truth({ lies, sync }: { lies: boolean; sync: SyncView }) {
  const [result, setResult] = useState<ReceiptsView | null>(null);
  const { busy, fault, act, again } = useAct();
  return (
    <section aria-labelledby="truth">
      <h2 id="truth">{t("truth")}</h2>
      <p class="soft">{t("truth-what", { count: sync.receipts })}</p>
      <button type="button" aria-disabled={busy} onClick={() => act(async () => (setResult(null), setResult(await call("receipts", {}))))} data-test="receipts">
        {t(busy ? "truth-busy" : "truth-check")}
      </button>
      <a class="button" href={to("school", "compare")} data-test="to-compare">{t("compare")}</a>
      <div role="status">{result && <ReceiptsResult result={result} />}</div>
      <FaultNote fault={fault} again={again} />
      <details open={lies}>
        <summary data-test="anew">{t("anew")}</summary>
        <p>{t("anew-what")}</p>
        <button type="button" aria-disabled={busy} onClick={() => act(async () => (setResult(null), heard(await call("server-anew", {}))))} data-test="server-anew">
          {t("anew-do")}
        </button>
      </details>
    </section>
  );
}
