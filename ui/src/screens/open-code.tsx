// Opening whatever a code is about: a machine's label, a record sheet, what another phone or a board shows.
import { call } from "../calls";
import { layReady } from "../drafts";
import { type Kind, kindOf } from "../kinds";
import { Page } from "../parts/page";
import { Reader } from "../parts/reader";
import { turnTo } from "../route";
import { lookAtSchool, school } from "../school";
import { t } from "../words";

/** What each kind leads to. */
const WAYS: Record<Kind, (text: string) => Promise<void>> = {
  label: async (text) => turnTo("machine", (await call("open-label", { text })).card.id),
  record: async (text) => turnTo("record", (await call("record", { digest: text })).digest),
  look: async (text) => {
    layReady("look/asked", { text, view: await call("second-look-open", { text }) });
    layReady("look/seen", {});
    layReady("look/reply", null);
    turnTo("look");
  },
  applicant: async (text) => {
    const who = await call("school-applicant", { text });
    await lookAtSchool();
    // Only the root admits; anybody has devices of their own.
    const root = school.value?.root ?? false;
    layReady(root ? "admit/who" : "device/other", who);
    layReady(root ? "admit/answer" : "device/vouched", null);
    turnTo("school", root ? "admit" : "device");
  },
  answer: async (text) => {
    layReady("school/answer", text);
    turnTo("school", "join");
  },
  checkpoint: async (text) => {
    layReady("reader/compare", text);
    turnTo("school", "compare");
  },
  desk: async (text) => {
    await call("desk-open", { text });
    layReady("desk/text", text);
    layReady("desk/told", "");
    turnTo("desk");
  },
};

export function OpenCode() {
  return (
    <Page screen="code" title={t("code-open")} back={{ href: "#/", words: t("to-machines") }}>
      <p>{t("code-open-what")}</p>
      <Reader name="code" deed={t("code-open-it")} onText={async (text) => WAYS[kindOf(text) ?? "label"](text)} />
    </Page>
  );
}
