// A machine under the school's roles, or out of them.
import { call } from "../../calls";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { lookAtSchool, useSchool } from "../../school";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

export function Enrol({ machine }: { machine: string }) {
  const own = useSchool();
  const page = useLoad("machine", { id: machine });
  const back = { href: to("machine", machine), words: page.value?.card.name ?? t("to-machine") };
  if (!own.value || !page.value)
    return <Waiting screen="enrol" fault={own.fault ?? page.fault} again={() => (own.again(), page.again())} back={back} />;
  const school = own.value.school?.name;
  const known = own.value.machines.find((one) => one.id === machine);
  const enrolled = known?.enrolled ?? false;
  // The core says who may; the root may take out what it didn't bring in.
  const may = school && (known?.own || (own.value.root && enrolled));
  return (
    <Page screen="enrol" title={t(enrolled ? "enrol-out-title" : "enrol-title", { machine: page.value.card.name })} back={back}>
      {!school && <p>{t("enrol-no-school")}</p>}
      {school && <p>{t(enrolled ? "enrol-out-what" : "enrol-what", { school })}</p>}
      {school && !may && <p class="soft">{t("enrol-not-yours")}</p>}
      {may && (
        <SignedForm
          deed={t(enrolled ? "enrol-out-sign" : "enrol-sign")}
          onSign={async (pin) => {
            await call("machine-enrol", { machine, enrolled: !enrolled, pin });
            await lookAtSchool();
            turnTo("machine", machine);
          }}
        >
          <p class="soft">{t("enrol-records")}</p>
        </SignedForm>
      )}
    </Page>
  );
}

/** On the machine's page: under which school it is. Nothing where there is no school. */
export function EnrolledRow({ machine }: { machine: string }) {
  const { value } = useSchool();
  if (!value?.school) return null;
  const enrolled = value.machines.find((one) => one.id === machine)?.enrolled ?? false;
  return (
    <section aria-labelledby="of-school">
      <h2 id="of-school">{t("school")}</h2>
      <ul class="rows">
        <li>
          <a href={to("machine", machine, "school")} data-test="to-enrol" data-enrolled={enrolled}>
            <span class="grow">{t(enrolled ? "machine-under" : "machine-not-under", { school: value.school.name })}</span>
          </a>
        </li>
      </ul>
    </section>
  );
}
