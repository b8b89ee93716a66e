// What goes up, and what the wing may carry.
import { to } from "../../route";
import type { FlightForm, Range, WingLoad } from "../../types";
import { signOf } from "../../units";
import { figure, t } from "../../words";
import { Amount, type Sheet } from "./amount";

export function Load({ form, sheet }: { form: FlightForm; sheet: Sheet }) {
  const { mass, volume } = form.units;
  return (
    <>
      {form.wing ? <Wing wing={form.wing} /> : <NoWing machine={form.machine} />}
      <div class="beside amounts">
        <Amount sheet={sheet} name="pilot" units={mass} />
        <Amount sheet={sheet} name="machine" units={mass} />
        {form.burns_fuel && <Amount sheet={sheet} name="fuel" units={volume} />}
        <Amount sheet={sheet} name="ballast" units={mass} />
      </div>
    </>
  );
}

export function Wing({ wing }: { wing: WingLoad }) {
  const source = wing.document ? t("flight-source", { document: wing.document, page: wing.page ?? "" }) : t("flight-wing-unsourced");
  return (
    <p class={wing.document ? "soft" : "unconfirmed"} data-test="flight-wing">
      {t("flight-wing", { range: span(wing.with_motor) })}
      {wing.without_motor && ` ${t("flight-wing-without", { range: span(wing.without_motor) })}`} {source}
    </p>
  );
}

function NoWing({ machine }: { machine: string }) {
  return (
    <p class="unconfirmed">
      {t("flight-no-wing")} <a href={to("machine", machine, "edit")} data-test="flight-to-wing">{t("flight-to-wing")}</a>
    </p>
  );
}

function span({ low, high }: Range): string {
  return t("flight-span", { low: figure(low.value), high: figure(high.value), unit: signOf("mass", low.unit) });
}
