// What all records together tell: how long parts last, how people look, what the points of the lists are worth.
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { useSchool } from "../../school";
import { t } from "../../words";
import { PartsList } from "./parts-list";

export function Fleet() {
  const own = useSchool();
  const { value, fault, again } = useLoad("life-parts", {});
  const school = own.value?.school;
  const back = school ? { href: to("school"), words: school.name } : { href: "#/", words: t("to-machines") };
  if (!value) return <Waiting screen="fleet" fault={fault} again={again} back={back} />;
  return (
    <Page
      screen="fleet"
      title={t("fleet-title")}
      over={school ? school.name : t("fleet-own")}
      back={back}
      foot={
        <nav class="beside tight" aria-label={t("fleet-more")}>
          <a class="button" href={to("looking")} data-test="to-looking">{t("looking-title")}</a>
          <a class="button" href={to("worth")} data-test="to-worth">{t("worth-title")}</a>
        </nav>
      }
    >
      <p>{t("fleet-what")}</p>
      <section aria-labelledby="lives">
        <h2 id="lives">{t("fleet-lives")}</h2>
        <PartsList parts={value} />
      </section>
    </Page>
  );
}
