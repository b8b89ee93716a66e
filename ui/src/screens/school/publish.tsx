// Publishing lists or data sheets to all members: checked before it is signed, fault by fault.
import { useEffect, useState } from "preact/hooks";
import { asFault, call, type Fault } from "../../calls";
import { useDraft } from "../../drafts";
import { FaultNote } from "../../parts/fault";
import { Field, TextArea } from "../../parts/field";
import { Page } from "../../parts/page";
import { to, turnTo } from "../../route";
import { heard, useSchool } from "../../school";
import type { PublishFile, PublishPreview } from "../../types";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { Files } from "./publish-files";
import { Preview } from "./publish-preview";

export function Publish() {
  const own = useSchool();
  const [title, setTitle, doneTitle] = useDraft("publish/title", "");
  const [files, setFiles, doneFiles] = useDraft<PublishFile[]>("publish/files", []);
  const [note, setNote, doneNote] = useDraft("publish/note", "");
  const { preview, fault } = useChecked(title, files);
  const back = { href: to("school"), words: own.value?.school?.name ?? t("school") };
  return (
    <Page screen="publish" title={t("publish")} back={back}>
      <p>{t("publish-what")}</p>
      <Files files={files} onFiles={setFiles} />
      <FaultNote fault={fault} />
      <div role="status">{preview && files.length > 0 && <Preview preview={preview} />}</div>
      {files.length > 0 && (
        <SignedForm
          deed={t("publish-sign")}
          onSign={async (pin) => {
            heard(await call("publish", { title, files, note, pin }));
            doneTitle();
            doneFiles();
            doneNote();
            turnTo("school");
          }}
        >
          <Field words={t("publish-title")} hint={t("publish-title-hint")} value={title} onValue={setTitle} test="publish-title" />
          <TextArea words={t("publish-note")} value={note} onValue={setNote} test="publish-note" rows={2} />
        </SignedForm>
      )}
    </Page>
  );
}

/** What the core says of the files; asked anew whenever they change. */
function useChecked(title: string, files: PublishFile[]) {
  const [preview, setPreview] = useState<PublishPreview | null>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  useEffect(() => {
    let wanted = true;
    setFault(null);
    if (files.length === 0) return setPreview(null);
    call("publish-preview", { title, files }).then(
      (reply) => wanted && setPreview(reply),
      (thrown) => wanted && (setPreview(null), setFault(asFault(thrown))),
    );
    return () => void (wanted = false);
  }, [title, files]);
  return { preview, fault };
}
