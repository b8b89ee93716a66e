// Preparing lists or data sheets for all members: every fault at once, then what changes, then the code.
import { useEffect, useState } from "preact/hooks";
import { asFault, type Fault } from "../../src/calls";
import { useDraft } from "../../src/drafts";
import { useAct } from "../../src/hooks";
import { Caution } from "../../src/parts/cautions";
import { FaultNote } from "../../src/parts/fault";
import { Field, TextArea } from "../../src/parts/field";
import { Files } from "../../src/screens/school/publish-files";
import { Preview } from "../../src/screens/school/publish-preview";
import type { PublishFile, PublishPreview } from "../../src/types";
import { t } from "../../src/words";
import { post } from "../ask";
import { lookAtDrafts } from "../live";
import { SheetTitle } from "../sheet";
import { SignThere, type Prepared } from "./sign-there";

interface Published {
  preview: PublishPreview;
  prepared: Prepared | null;
}

export function Publish() {
  const [title, setTitle, doneTitle] = useDraft("publish/title", "");
  const [files, setFiles, doneFiles] = useDraft<PublishFile[]>("publish/files", []);
  const [note, setNote, doneNote] = useDraft("publish/note", "");
  const [prepared, setPrepared] = useState<Prepared | null>(null);
  const { preview, fault: unchecked } = useChecked(title, files);
  const { busy, fault, act, again } = useAct();
  const prepare = () =>
    act(async () => {
      const told = await post<Published>("prepare/publication", { title, files, note, only_preview: false });
      if (!told.prepared) return;
      await lookAtDrafts();
      setPrepared(told.prepared);
      doneTitle();
      doneFiles();
      doneNote();
    });
  return (
    <>
      <SheetTitle>{t("wall-publish")}</SheetTitle>
      {prepared ? (
        <SignThere prepared={prepared} />
      ) : (
        <form onSubmit={(event) => (event.preventDefault(), void prepare())}>
          <p>{t("wall-publish-what")}</p>
          <Caution words={t("wall-publish-caution")} />
          <Files files={files} onFiles={setFiles} />
          <FaultNote fault={unchecked} />
          <div role="status">{preview && files.length > 0 && <Preview preview={preview} />}</div>
          <Field words={t("wall-publish-title")} hint={t("wall-publish-title-hint")} value={title} onValue={setTitle} test="publish-title" />
          <TextArea words={t("wall-publish-note")} value={note} onValue={setNote} test="publish-note" rows={2} />
          <FaultNote fault={fault} again={again} />
          <button type="submit" class="go" aria-disabled={busy || files.length === 0 || Boolean(preview?.faults.length)} data-test="prepare">
            {t("wall-prepare")}
          </button>
          <p class="soft">{t("wall-prepare-what")}</p>
        </form>
      )}
    </>
  );
}

/** What the server says of the files; asked anew whenever they change. */
function useChecked(title: string, files: PublishFile[]) {
  const [preview, setPreview] = useState<PublishPreview | null>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  useEffect(() => {
    let wanted = true;
    setFault(null);
    if (files.length === 0) return setPreview(null);
    post<Published>("prepare/publication", { title, files, note: "", only_preview: true }).then(
      (told) => wanted && setPreview(told.preview),
      (thrown) => wanted && (setPreview(null), setFault(asFault(thrown))),
    );
    return () => void (wanted = false);
  }, [title, files]);
  return { preview, fault };
}
