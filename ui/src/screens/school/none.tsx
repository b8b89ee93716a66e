// No school yet: the app needs none; these are the ways into one.
import { Page } from "../../parts/page";
import { MachinePicture } from "../../parts/plan";
import { to } from "../../route";
import type { SchoolView } from "../../types";
import { t } from "../../words";
import { OwnCode } from "./spoken";

export function NoSchool({ view }: { view: SchoolView }) {
  return (
    <Page
      screen="school-none"
      title={t("school-none")}
      back={{ href: "#/", words: t("to-machines") }}
      picture={<MachinePicture />}
      foot={
        <nav class="foot-rows" aria-label={t("school-ways")}>
          <a class="button go" href={to("school", "join")} data-test="to-join">{t("join-by-code")}</a>
          <div class="beside tight">
            <a class="button" href={to("school", "address")} data-test="to-address">{t("join-by-address")}</a>
            <a class="button" href={to("school", "found")} data-test="to-found">{t("found-one")}</a>
          </div>
        </nav>
      }
    >
      <p>{t("school-none-what")}</p>
      <OwnCode code={view.code} />
      <nav class="links" aria-label={t("machines-more")}>
        <a href={to("school", "device")} data-test="to-device">{t("device-title")}</a>
        <a href={to("board")} data-test="to-board">{t("board-own")}</a>
      </nav>
    </Page>
  );
}
