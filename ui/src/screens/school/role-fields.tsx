// As what, and until when.
import { Field } from "../../parts/field";
import type { Role } from "../../types";
import { t } from "../../words";

export interface Term {
  role: Role | null;
  until: string;
}

export const NO_TERM: Term = { role: null, until: "" };

const ROLES: Role[] = ["pilot", "mechanic", "instructor", "viewer"];

export function RoleFields({ term, onTerm }: { term: Term; onTerm: (term: Term) => void }) {
  return (
    <>
      <fieldset>
        <legend>{t("role-as-what")}</legend>
        {ROLES.map((role) => (
          <label key={role} class="choice">
            <input type="radio" name="role" checked={term.role === role} onChange={() => onTerm({ ...term, role })} data-test={`role-${role}`} />
            <span class="grow">
              {t(`as-${role}`)} <span class="block soft">{t(`may-${role}`)}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <Field words={t("role-until")} hint={t("role-until-hint")} value={term.until} onValue={(until) => onTerm({ ...term, until })} test="role-until" input={{ type: "date" }} />
    </>
  );
}
