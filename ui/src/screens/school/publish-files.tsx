// The files of a publication, and the folder of the catalogue in which each belongs.
import { useAct } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Field } from "../../parts/field";
import type { PublishFile } from "../../types";
import { language, languageName, languages, t } from "../../words";

const FOLDERS = ["engines", "fragments", "assembly", "drawings"] as const;
/** Files that lie beside the folders, in none of them. */
const BESIDE = ["limits.toml", "measures.toml"];
const TEXTS = "texts/";

/** Where a file most likely belongs; the person has the last word. */
function folderOf(name: string, text: string): string {
  if (BESIDE.includes(name)) return "";
  if (name.endsWith(".svg")) return "drawings";
  if (name.endsWith(".ftl")) return TEXTS + language.value;
  if (/^\[\[point\]\]/m.test(text)) return "fragments";
  return /^(serves\b|\[\[(joint|part|job)\]\])/m.test(text) ? "assembly" : "engines";
}

const pathOf = (folder: string, name: string) => (folder === "" ? name : `${folder}/${name}`);
const split = (path: string) => ({ folder: path.slice(0, Math.max(0, path.lastIndexOf("/"))), name: path.slice(path.lastIndexOf("/") + 1) });

export function Files({ files, onFiles }: { files: PublishFile[]; onFiles: (files: PublishFile[]) => void }) {
  const { fault, act } = useAct();
  const add = (chosen: File[]) =>
    act(async () => {
      const read = await Promise.all(
        chosen.map(async (file) => {
          const text = await file.text();
          return { path: pathOf(folderOf(file.name, text), file.name), text };
        }),
      );
      // A file chosen again has been put right meanwhile: it takes the place of what was read before.
      const again = new Set(read.map(({ path }) => split(path).name));
      onFiles([...files.filter(({ path }) => !again.has(split(path).name)), ...read]);
    });
  const move = (index: number, folder: string) =>
    onFiles(files.map((file, at) => (at === index ? { ...file, path: pathOf(folder, split(file.path).name) } : file)));
  return (
    <>
      <label class="button file">
        {t(files.length === 0 ? "publish-choose" : "publish-more")}
        <input
          type="file"
          class="unseen"
          multiple
          accept=".toml,.ftl,.svg"
          onChange={(event) => {
            void add([...(event.currentTarget.files ?? [])]);
            event.currentTarget.value = "";
          }}
          data-test="publish-files"
        />
      </label>
      <FaultNote fault={fault} />
      {files.map((file, index) => {
        const { folder, name } = split(file.path);
        return (
          <div key={file.path} class="chosen-file" data-test={`file-${name}`}>
            <Folder name={name} folder={folder} onFolder={(chosen) => move(index, chosen)} />
            <button type="button" class="small" onClick={() => onFiles(files.filter((_, at) => at !== index))} data-test={`without-${name}`}>
              {t("publish-without")}
              <span class="unseen"> {name}</span>
            </button>
          </div>
        );
      })}
    </>
  );
}

/** Words may be in any language: one that is here already, or a new one by its code. */
function Folder({ name, folder, onFolder }: { name: string; folder: string; onFolder: (folder: string) => void }) {
  const code = folder.startsWith(TEXTS) ? folder.slice(TEXTS.length) : null;
  const known = languages();
  const isNew = code !== null && !known.includes(code);
  return (
    <>
      <label class="field">
        <span class="mono">{name}</span>
        <select value={isNew ? TEXTS : folder} onChange={(event) => onFolder(event.currentTarget.value)} data-test={`folder-${name}`}>
          {BESIDE.includes(name) && <option value="">{t("folder-none")}</option>}
          {FOLDERS.map((one) => (
            <option key={one} value={one}>{t(`folder-${one}`)}</option>
          ))}
          {known.map((one) => (
            <option key={one} value={TEXTS + one}>{t("folder-texts", { language: languageName(one) })}</option>
          ))}
          <option value={TEXTS}>{t("folder-texts-other")}</option>
        </select>
      </label>
      {isNew && (
        <Field
          words={t("folder-language")}
          hint={t("folder-language-hint")}
          value={code}
          onValue={(typed) => onFolder(TEXTS + typed.replace(/[^A-Za-z0-9-]/g, ""))}
          test={`language-${name}`}
          input={{ autocapitalize: "none" }}
        />
      )}
    </>
  );
}
