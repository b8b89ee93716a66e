// Something prepared at the board: read here as it would be signed, with what it would change.
import { call } from "../../calls";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { PaintMark } from "../../parts/mark";
import { Reasons } from "../../parts/reasons";
import { StateShape } from "../../parts/shape";
import { to } from "../../route";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

interface DeskDraftProps {
  text: string;
  back: { href: string; words: string };
  onDone: () => Promise<void>;
}

export function DeskDraft({ text, back, onDone }: DeskDraftProps) {
  const { value, fault, again } = useLoad("draft-open", { text });
  if (!value) return <Waiting screen="desk-draft" fault={fault} again={again} back={back} />;
  const { preview, machine } = value;
  return (
    <Page screen="desk-draft" title={value.words} over={t("draft-over", { school: value.school })} back={back}>
      {machine && <MachineLink machine={machine} />}
      {preview && machine && (
        <section class="preview" aria-labelledby="preview" data-test="preview" data-state={preview.state}>
          <h2 id="preview">{t("summary-preview")}</h2>
          <div class="sign">
            <StateShape state={preview.state} size={56} />
            <PaintMark state={preview.state} />
          </div>
          <p class="headline">{preview.headline}</p>
          <Reasons verdict={preview} machine={machine} />
        </section>
      )}
      <details>
        <summary>{t("draft-body")}</summary>
        <pre class="mono" tabIndex={0}>{value.body}</pre>
      </details>
      <SignedForm
        deed={t("draft-sign")}
        onSign={async (pin) => {
          await call("draft-sign", { text, pin });
          await onDone();
        }}
      >
        <p class="soft">{t("draft-means")}</p>
      </SignedForm>
    </Page>
  );
}

/** Which machine it is about, by the name it has here. */
function MachineLink({ machine }: { machine: string }) {
  const { value } = useLoad("machine", { id: machine });
  return <a class="row-link" href={to("machine", machine)}>{value?.card.name ?? t("to-machine")}</a>;
}
