// Another person signs on this very device, with a key and PIN of their own.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { Joints, told, type Seen } from "./joints";
import { AddPerson } from "./add-person";

export function SecondHere({ machine }: { machine: string }) {
  const page = useLoad("machine", { id: machine });
  const people = useLoad("second-people", {});
  const [seen, setSeen, done] = useDraft<Seen>(`second/${page.value?.job?.record ?? machine}`, {});
  const [chosen, setChosen] = useDraft(`second/${machine}/who`, "");
  const back = { href: to("machine", machine, "second"), words: t("second-title") };
  if (!page.value || !people.value)
    return <Waiting screen="second-here" fault={page.fault ?? people.fault} again={() => (page.again(), people.again())} back={back} />;
  const joints = page.value.job?.independent ?? [];
  const list = people.value;
  const device = list.length === 1 ? list[0]!.device : chosen;
  const who = list.find((one) => one.device === device);
  return (
    <Page screen="second-here" title={t("second-here-title")} over={page.value.job?.title ?? page.value.card.name} back={back}>
      <p>{t("second-here-what")}</p>
      {list.length > 1 && (
        <fieldset>
          <legend>{t("second-who")}</legend>
          {list.map((one) => (
            <label key={one.device} class="choice">
              <input type="radio" name="who" checked={device === one.device} onChange={() => setChosen(one.device)} data-test={`who-${one.device}`} />
              <span class="grow">{one.name}</span>
            </label>
          ))}
        </fieldset>
      )}
      {who && joints.length > 0 && (
        <SignedForm
          deed={t("second-here-sign", { name: who.name })}
          pinWords={t("second-here-pin", { name: who.name })}
          onSign={async (pin) => {
            await call("second-look-here", { machine, device, joints: told(joints, seen), pin });
            done();
            turnTo("machine", machine);
          }}
        >
          <Joints joints={joints} seen={seen} onSeen={setSeen} />
          <p class="soft">{t("second-means")}</p>
        </SignedForm>
      )}
      <details open={list.length === 0}>
        <summary data-test="second-new">{t("second-new")}</summary>
        <AddPerson onPeople={(all) => { const before = list.map((one) => one.device); people.put(all); setChosen(all.find((one) => !before.includes(one.device))?.device ?? chosen); }} />
      </details>
    </Page>
  );
}
