// What is signed about a member: another role, the end of a membership or of a key, the root handed over.
import type { ComponentChildren } from "preact";
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { TextArea } from "../../parts/field";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { heard } from "../../school";
import type { MemberView, SchoolView } from "../../types";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { useMember } from "./member";
import { NO_TERM, RoleFields, type Term } from "./role-fields";

interface DeedProps {
  person: string;
  screen: string;
  title: (member: MemberView) => string;
  deed: string;
  /** What is signed; the reply is the school afterwards. */
  sign: (pin: string) => Promise<SchoolView>;
  done: () => void;
  children: (member: MemberView) => ComponentChildren;
}

function Deed({ person, screen, title, deed, sign, done, children }: DeedProps) {
  const { view, member, fault, again } = useMember(person);
  const back = { href: to("school", "member", person), words: member?.name ?? t("school") };
  if (!view || !member) return <Waiting screen={screen} fault={fault} again={again} back={back} />;
  return (
    <Page screen={screen} title={title(member)} over={`${member.role_words} · ${member.term}`} back={back}>
      <SignedForm
        deed={deed}
        onSign={async (pin) => {
          heard(await sign(pin));
          done();
          turnTo("school", "member", person);
        }}
      >
        {children(member)}
      </SignedForm>
    </Page>
  );
}

export function MemberRole({ person }: { person: string }) {
  const [term, setTerm, done] = useDraft<Term>(`school/role/${person}`, NO_TERM);
  return (
    <Deed
      person={person}
      screen="member-role"
      title={({ name }) => t("role-change-title", { name })}
      deed={t("role-sign")}
      sign={(pin) => call("school-role", { person, role: term.role, until: term.until || null, pin })}
      done={done}
    >
      {() => <RoleFields term={term} onTerm={setTerm} />}
    </Deed>
  );
}

export function EndMember({ person }: { person: string }) {
  const [reason, setReason, done] = useDraft(`school/end/${person}`, "");
  return (
    <Deed
      person={person}
      screen="member-end"
      title={({ name }) => t("end-title", { name })}
      deed={t("end-sign")}
      sign={(pin) => call("school-end", { person, reason, pin })}
      done={done}
    >
      {() => (
        <>
          <p>{t("end-what")}</p>
          <TextArea words={t("end-reason")} value={reason} onValue={setReason} test="end-reason" rows={2} />
        </>
      )}
    </Deed>
  );
}

const codeOf = (member: MemberView, device: string) => member.devices.find((one) => one.device === device)?.code ?? device;

export function EndKey({ person, device }: { person: string; device: string }) {
  const [reason, setReason, done] = useDraft(`school/key/${device}`, "");
  return (
    <Deed
      person={person}
      screen="key-end"
      title={() => t("key-title")}
      deed={t("key-sign")}
      sign={(pin) => call("key-end", { device, reason, pin })}
      done={done}
    >
      {(member) => (
        <>
          <p>{t("key-what", { name: member.name })}</p>
          <p class="mono strong">{codeOf(member, device)}</p>
          <TextArea words={t("key-reason")} hint={t("key-reason-hint")} value={reason} onValue={setReason} test="end-reason" rows={2} />
        </>
      )}
    </Deed>
  );
}

export function HandRoot({ person, device }: { person: string; device: string }) {
  return (
    <Deed
      person={person}
      screen="root-hand"
      title={({ name }) => t("hand-title", { name })}
      deed={t("hand-sign")}
      sign={(pin) => call("school-hand", { device, pin })}
      done={() => undefined}
    >
      {(member) => (
        <>
          <p>{t("hand-what", { name: member.name })}</p>
          <p class="mono strong">{codeOf(member, device)}</p>
        </>
      )}
    </Deed>
  );
}
