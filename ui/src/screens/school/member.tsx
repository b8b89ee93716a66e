// One member: as what, since when, with which devices; and what the root can do about it.
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { useSchool } from "../../school";
import type { MemberDevice, MemberView, SchoolView } from "../../types";
import { t } from "../../words";

/** The member of an address, or why there is none. */
export function useMember(person: string) {
  const { value, fault, again } = useSchool();
  return { view: value, member: value?.members.find((one) => one.person === person), fault, again };
}

export function MemberScreen({ person }: { person: string }) {
  const { view, member, fault, again } = useMember(person);
  const back = { href: to("school"), words: view?.school?.name ?? t("school") };
  if (!view) return <Waiting screen="member" fault={fault} again={again} back={back} />;
  if (!member) return <Page screen="member" title={t("member-unknown")} back={back}><p>{t("member-unknown-hint")}</p></Page>;
  const holdsRoot = member.devices.some((device) => device.root);
  return (
    <Page screen="member" title={member.name} over={`${member.role_words} · ${member.term}`} back={back}>
      {!member.standing && <p class="banner">{t("member-no-longer")}</p>}
      {view.root && member.standing && (
        <nav class="beside tight" aria-label={t("member-deeds")}>
          <a class="button" href={to("school", "member", person, "role")} data-test="to-role">{t("role-change")}</a>
          {!holdsRoot && <a class="button" href={to("school", "member", person, "end")} data-test="to-end">{t("end-member")}</a>}
        </nav>
      )}
      <section aria-labelledby="devices">
        <h2 id="devices">{t("member-their-devices", { count: member.devices.length })}</h2>
        <ul class="rows">
          {member.devices.map((device) => <Device key={device.device} view={view} member={member} device={device} />)}
        </ul>
      </section>
      <p class="soft">{t("member-code-what")}</p>
    </Page>
  );
}

function Device({ view, member, device }: { view: SchoolView; member: MemberView; device: MemberDevice }) {
  const here = device.code === view.code;
  const words = [here && t("device-here"), device.root && t("device-root"), device.ended && t("device-ended")].filter(Boolean).join(" · ");
  // The root's own device can't be ended by itself; another of the same person's can end it.
  const mayEnd = !device.ended && !here && (view.root || member.you);
  return (
    <li class="device" data-test={`device-${device.code}`} data-ended={device.ended}>
      <p class="mono strong">{device.code}</p>
      {words && <p class={device.ended ? "stop" : "soft"}>{words}</p>}
      {(mayEnd || (view.root && !device.root && !device.ended && member.standing)) && (
        <div class="beside tight">
          {mayEnd && (
            <a class="button small" href={to("school", "member", member.person, "key", device.device)} data-test={`to-key-end-${device.code}`}>
              {t("key-lost")}
              <span class="unseen">: {device.code}</span>
            </a>
          )}
          {view.root && !device.root && !device.ended && member.standing && (
            <a class="button small" href={to("school", "member", member.person, "hand", device.device)} data-test={`to-hand-${device.code}`}>
              {t("hand-root")}
              <span class="unseen">: {device.code}</span>
            </a>
          )}
        </div>
      )}
    </li>
  );
}
