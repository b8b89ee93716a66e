// This device's place in a school: who is in it, what is under it, how it stands with its server.
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { useSchool } from "../../school";
import type { SchoolView } from "../../types";
import { t } from "../../words";
import { Members } from "./members";
import { NoSchool } from "./none";
import { Published } from "./published";
import { SchoolFileOut } from "./school-file";
import { OwnCode } from "./spoken";
import { SyncCard } from "./sync-card";

export function SchoolScreen() {
  const { value, fault, again } = useSchool();
  const back = { href: "#/", words: t("to-machines") };
  if (!value) return <Waiting screen="school" fault={fault} again={again} back={back} />;
  if (!value.school) return <NoSchool view={value} />;
  return <Member view={value} name={value.school.name} />;
}

/** Whoever teaches, or holds the root, has the machines of others in mind. */
const looksAfter = (view: SchoolView) => view.root || view.role === "instructor";

function Member({ view, name }: { view: SchoolView; name: string }) {
  return (
    <Page
      screen="school"
      title={name}
      over={t("school-over", { role: view.role ? view.role_words : "empty", root: view.root ? "yes" : "no" })}
      back={{ href: "#/", words: t("to-machines") }}
      picture={<Standing view={view} />}
      foot={
        <nav class="beside tight" aria-label={t("school-deeds")}>
          {looksAfter(view) && <a class="button go" href={to("board")} data-test="to-board">{t("board")}</a>}
          {view.root && <a class="button" href={to("school", "admit")} data-test="to-admit">{t("admit")}</a>}
          {!view.root && <a class="button" href={to("code")} data-test="to-code">{t("code-open")}</a>}
        </nav>
      }
    >
      {!view.role && <p class="banner">{t("school-no-role")}</p>}
      <Members members={view.members} />
      <Machines view={view} />
      <Published published={view.published} publishes={view.role === "instructor"} />
      <section aria-labelledby="yours">
        <h2 id="yours">{t("school-yours")}</h2>
        <ul class="rows">
          <li><a href={to("fleet")} data-test="to-fleet">{t("fleet-title")}</a></li>
          <li><a href={to("school", "device")} data-test="to-device">{t("device-title")}</a></li>
          <li><a href={to("school", "join")} data-test="to-join">{t("school-show-code")}</a></li>
          {view.root && <li><a href={to("school", "address")} data-test="to-address">{t("address-of-server")}</a></li>}
          {!view.root && <li><a href={to("school", "leave")} data-test="to-leave">{t("leave-school")}</a></li>}
        </ul>
      </section>
      {view.root && <SchoolFileOut />}
    </Page>
  );
}

function Standing({ view }: { view: SchoolView }) {
  return (
    <div class="standing">
      {view.school?.invented && <span class="invented">{t("invented")}</span>}
      <SyncCard sync={view.sync}>
        <a class="button" href={to("school", "server")} data-test="to-server">{t("server-more")}</a>
      </SyncCard>
      <OwnCode code={view.code} />
    </div>
  );
}

function Machines({ view }: { view: SchoolView }) {
  const machines = view.machines.filter((machine) => machine.own || machine.enrolled);
  return (
    <section aria-labelledby="enrolled">
      <h2 id="enrolled">{t("enrolled")}</h2>
      {machines.length === 0 && <p class="soft">{t("enrolled-none")}</p>}
      <ul class="rows">
        {machines.map((machine) => (
          <li key={machine.id}>
            <a href={machine.own ? to("machine", machine.id, "school") : to("machine", machine.id)} data-test={`enrolled-${machine.id}`} data-enrolled={machine.enrolled}>
              <span class="grow">
                <span class="strong">{machine.name}</span>{" "}
                <span class="block soft">
                  {t(machine.enrolled ? "enrolled-yes" : "enrolled-no")}
                  {machine.own && ` · ${t("enrolled-own")}`}
                </span>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
