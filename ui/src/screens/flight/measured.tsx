// That air or wind stands here from earlier today: whoever measures again types it anew.
import type { AirPlanned, WindPlanned } from "../../types";
import { language, t } from "../../words";

export function Measured({ part, at }: { part: AirPlanned | WindPlanned | undefined; at: string }) {
  if (!part) return null;
  const time = new Intl.DateTimeFormat(language.value, { hour: "2-digit", minute: "2-digit" }).format(new Date(part.measured ?? at));
  return <p class="soft" data-test="flight-measured">{t("flight-measured", { time })}</p>;
}
