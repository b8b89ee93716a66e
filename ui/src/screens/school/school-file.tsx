// What a server needs so that it can serve this school.
import { call } from "../../calls";
import { FileGift } from "../../parts/gift";
import { t } from "../../words";

export function SchoolFileOut() {
  return (
    <section aria-labelledby="file">
      <h2 id="file">{t("school-file")}</h2>
      <p class="soft">{t("school-file-what")}</p>
      <FileGift words={t("school-file-give")} test="school-file" make={() => call("school-file", {})} />
    </section>
  );
}
