// Joining by address: what the server says of its school is compared before anything is signed.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useAct } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Field } from "../../parts/field";
import { Page } from "../../parts/page";
import { to, turnTo } from "../../route";
import { heard, useSchool } from "../../school";
import type { SchoolCardView } from "../../types";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { OwnCode, Spoken } from "./spoken";

export function Follow() {
  const own = useSchool();
  const [address, setAddress, done] = useDraft("school/address", "");
  const [card, setCard, forget] = useDraft<SchoolCardView | null>("school/card", null);
  const { busy, fault, act } = useAct();
  const look = () => act(async () => setCard(await call("school-look", { address: address.trim() })));
  const back = { href: to("school"), words: own.value?.school?.name ?? t("school") };
  const anew = () => setCard(null);
  if (card)
    return (
      <Page screen="school-card" title={card.school.name} over={t("address-says")} back={back}>
        <p class="mono">{card.school.address ?? address}</p>
        {card.school.invented && <span class="invented">{t("invented")}</span>}
        <p>{t("address-root", { name: card.root })}</p>
        <Spoken code={card.school.code} words={t("address-compare")} test="school-code" />
        <p class="soft">{t("address-compare-how")}</p>
        <SignedForm
          deed={t("address-sign", { school: card.school.name })}
          onSign={async (pin) => {
            heard(await call("school-follow", { address: card.school.address ?? address, pin }));
            done();
            forget();
            turnTo("school");
          }}
        >
          {!card.admitted && own.value && !own.value.root && (
            <>
              <p>{t("address-not-admitted")}</p>
              <OwnCode code={own.value.code} />
            </>
          )}
        </SignedForm>
        <button type="button" class="as-link" onClick={anew} data-test="address-anew">{t("address-other")}</button>
      </Page>
    );
  return (
    <Page screen="school-address" title={t(own.value?.school ? "address-of-server" : "join-by-address")} back={back}>
      <p>{t("address-what")}</p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void look();
        }}
      >
        <Field
          words={t("address")}
          hint={t("address-hint")}
          value={address}
          onValue={setAddress}
          test="address"
          input={{ inputMode: "url", autocomplete: "off", autocapitalize: "none", spellcheck: false }}
        />
        <FaultNote fault={fault} />
        <button type="submit" class="go" aria-disabled={busy} data-test="address-look">
          {t(busy ? "address-busy" : "address-look")}
        </button>
      </form>
    </Page>
  );
}
