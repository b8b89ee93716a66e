// Every measure of a machine over its time in service: what drifts stands first.
import { useEffect } from "preact/hooks";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import type { TrendView } from "../../types";
import { t } from "../../words";
import { Invented } from "../machines";
import { ChartKey } from "./key";
import { Trend } from "./trend";

export function Trends({ machine, measure }: { machine: string; measure: string | undefined }) {
  const page = useLoad("machine", { id: machine });
  const { value, fault, again } = useLoad("trends", { machine });
  const back = { href: to("machine", machine), words: page.value?.card.name ?? t("to-machine") };
  useEffect(() => {
    if (value && measure) document.getElementById(`trend-${measure}`)?.scrollIntoView({ block: "start" });
  }, [value, measure]);
  if (!value || !page.value)
    return <Waiting screen="trends" fault={fault ?? page.fault} again={() => (again(), page.again())} back={back} />;
  const { card } = page.value;
  return (
    <Page
      screen="trends"
      broad
      title={t("trends-title")}
      over={t("trends-over", { machine: card.name, hours: card.hours })}
      back={back}
      foot={<a class="button" href={to("machine", machine, "readings")} data-test="to-readings">{t("readings-title")}</a>}
    >
      {card.invented && <Invented />}
      {value.length === 0 ? (
        <p data-test="trends-none">{t("trends-none")}</p>
      ) : (
        <>
          <p class="soft">{t("trends-what")}</p>
          <div class="trends">
            {first(value).map((trend) => <Trend key={trend.id} machine={machine} trend={trend} />)}
          </div>
          <ChartKey trends={value} />
        </>
      )}
    </Page>
  );
}

/** What drifts, then what tells something, then what tells too little; else in the order given. */
export function first(trends: TrendView[]): TrendView[] {
  const rank = ({ drifts, direction }: TrendView) => (drifts ? 0 : direction === "too-little" ? 2 : 1);
  return [...trends].sort((a, b) => rank(a) - rank(b));
}
