// Taking an engine's log in: the file, how its columns are read, what it tells, the signature.
import { call } from "../../calls";
import { useAct, useLoad } from "../../hooks";
import { Cautions } from "../../parts/cautions";
import { FaultNote } from "../../parts/fault";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { t } from "../../words";
import { begun, useChosen, type Chosen } from "./chosen";
import { Columns } from "./columns";
import { textOf } from "./read";
import { Told } from "./told";

export function TakeReadings({ machine }: { machine: string }) {
  const page = useLoad("machine", { id: machine });
  const [chosen, setChosen, done] = useChosen(machine);
  const back = { href: to("machine", machine), words: page.value?.card.name ?? t("to-machine") };
  if (!page.value) return <Waiting screen="readings" fault={page.fault} again={page.again} back={back} />;
  const anew = () => setChosen(null);
  const props = { machine, chosen: chosen as Chosen, onChosen: setChosen };
  if (!chosen)
    return (
      <Page screen="readings" title={t("readings-title")} over={page.value.card.name} back={back} foot={<Choose machine={machine} onChosen={setChosen} />}>
        <p>{t("readings-what")}</p>
        <ol class="steps">
          <li>{t("readings-step-file")}</li>
          <li>{t("readings-step-columns")}</li>
          <li>{t("readings-step-figures")}</li>
          <li>{t("readings-step-sign")}</li>
        </ol>
        <p class="soft">{t("readings-kept")}</p>
        <Cautions />
      </Page>
    );
  if (chosen.view.taken)
    return (
      <Page screen="readings-taken" title={t("readings-again")} over={chosen.name} back={back} foot={<TakenDeeds record={chosen.view.taken} onAnew={anew} />}>
        <p class="painted strong" data-test="readings-again">{t("readings-again-what")}</p>
      </Page>
    );
  return chosen.preview ? <Told {...props} back={back} onDone={done} onAnew={anew} /> : <Columns {...props} back={back} onAnew={anew} />;
}

function TakenDeeds({ record, onAnew }: { record: string; onAnew: () => void }) {
  return (
    <>
      <button type="button" onClick={onAnew} data-test="readings-other">{t("readings-other")}</button>
      <a class="button go" href={to("record", record)} data-test="taken-record">{t("readings-to-record")}</a>
    </>
  );
}

function Choose({ machine, onChosen }: { machine: string; onChosen: (chosen: Chosen) => void }) {
  const { busy, fault, act } = useAct();
  const take = (file: File) =>
    act(async () => {
      const text = await textOf(file);
      onChosen(begun(file.name, text, await call("log-open", { machine, name: file.name, text })));
    });
  return (
    <>
      <FaultNote fault={fault} />
      <label class="button go file">
        {t(busy ? "readings-busy" : "readings-choose")}
        <input
          type="file"
          class="unseen"
          accept=".csv,.txt,.tsv,.log,text/*"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            if (file) void take(file);
            event.currentTarget.value = "";
          }}
          data-test="readings-file"
        />
      </label>
    </>
  );
}
