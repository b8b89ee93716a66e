// Everybody of the school; who was a member stands behind one more tap.
import { to } from "../../route";
import type { MemberView } from "../../types";
import { t } from "../../words";

export function Members({ members }: { members: MemberView[] }) {
  const [now, before] = [members.filter((one) => one.standing), members.filter((one) => !one.standing)];
  return (
    <section aria-labelledby="members">
      <h2 id="members">{t("members", { count: now.length })}</h2>
      <ul class="rows">{now.map((member) => <Row key={member.person} member={member} />)}</ul>
      {before.length > 0 && (
        <details>
          <summary data-test="members-before">{t("members-before", { count: before.length })}</summary>
          <ul class="rows">{before.map((member) => <Row key={member.person} member={member} />)}</ul>
        </details>
      )}
    </section>
  );
}

function Row({ member }: { member: MemberView }) {
  const phones = member.devices.filter((device) => !device.ended).length;
  return (
    <li>
      <a href={to("school", "member", member.person)} data-test={`member-${member.person}`} data-role={member.role} data-standing={member.standing}>
        <span class="grow">
          <span class="line">
            <span class="strong">{member.you ? t("member-you", { name: member.name }) : member.name}</span>
            <span>{member.role_words}</span>
          </span>
          <span class="block soft">
            {member.devices.some((device) => device.root) && `${t("device-root")} · `}
            {member.term} · {t("member-devices", { count: phones })}
          </span>
        </span>
      </a>
    </li>
  );
}
