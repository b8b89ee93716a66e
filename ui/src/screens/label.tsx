// Opening a machine by the label that sticks on it.
import { call } from "../calls";
import { Page } from "../parts/page";
import { Reader } from "../parts/reader";
import { turnTo } from "../route";
import { t } from "../words";

export function OpenLabel() {
  return (
    <Page screen="label" title={t("label-title")} back={{ href: "#/", words: t("to-machines") }}>
      <p>{t("label-what")}</p>
      <Reader
        name="label"
        deed={t("label-open")}
        onText={async (text) => {
          const page = await call("open-label", { text });
          turnTo("machine", page.card.id);
        }}
      />
    </Page>
  );
}
