// That air or wind stands here from earlier today: whoever measures again types it anew.
import type { AirPlanned, WindPlanned } from "../../types";
import { language, t } from "../../words";

/** `typed` is whether any of it was typed since. */
export function Measured({ part, at, typed }: { part: AirPlanned | WindPlanned | undefined; at: string; typed: boolean }) {
  if (!part || typed) return null;
  const time = new Intl.DateTimeFormat(language.value, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" }).format(new Date(part.measured ?? at));
  return <p class="soft" data-test="flight-measured">{t("flight-measured", { time })}</p>;
}
