// Lines from a server that were no good: kept for whoever looks into it, counted for nothing.
import { call } from "../../calls";
import { useAct, useLoad } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { t } from "../../words";

export function Refused() {
  const { value, fault, again, put } = useLoad("refused", {});
  const away = useAct();
  const back = { href: to("school", "server"), words: t("server-title") };
  if (!value) return <Waiting screen="refused" fault={fault} again={again} back={back} />;
  return (
    <Page screen="refused" title={t("refused")} back={back}>
      <p>{t(value.length === 0 ? "refused-none" : "refused-what")}</p>
      <FaultNote fault={away.fault} again={away.again} />
      <ul class="findings">
        {value.map((one) => (
          <li key={one.number} class="person" data-test={`refused-${one.number}`}>
            <p class="strong">{one.words}</p>
            {one.machine && <a class="row-link" href={to("machine", one.machine)}>{t("to-machine")}</a>}
            <details>
              <summary>{t("refused-line")}</summary>
              <pre class="mono" tabIndex={0}>{one.line}</pre>
            </details>
            <button
              type="button"
              aria-disabled={away.busy}
              onClick={() => away.act(async () => put(await call("refused-away", { number: one.number })))}
              data-test={`refused-away-${one.number}`}
            >
              {t("refused-away")}
            </button>
          </li>
        ))}
      </ul>
    </Page>
  );
}
