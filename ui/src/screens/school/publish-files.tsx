// The files of a publication, and the folder of the catalogue in which each belongs.
import { useAct } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import type { PublishFile } from "../../types";
import { t } from "../../words";

const FOLDERS = ["engines", "fragments", "assembly", "drawings", "texts/en"] as const;

/** Where a file most likely belongs; the person has the last word. */
function folderOf(name: string, text: string): string {
  if (name.endsWith(".svg")) return "drawings";
  if (name.endsWith(".ftl")) return "texts/en";
  if (/^\[\[point\]\]/m.test(text)) return "fragments";
  return /^(serves\b|\[\[(joint|part|job)\]\])/m.test(text) ? "assembly" : "engines";
}

const split = (path: string) => ({ folder: path.slice(0, path.lastIndexOf("/")), name: path.slice(path.lastIndexOf("/") + 1) });

export function Files({ files, onFiles }: { files: PublishFile[]; onFiles: (files: PublishFile[]) => void }) {
  const { fault, act } = useAct();
  const add = (chosen: File[]) =>
    act(async () => {
      const read = await Promise.all(
        chosen.map(async (file) => {
          const text = await file.text();
          return { path: `${folderOf(file.name, text)}/${file.name}`, text };
        }),
      );
      // A file chosen again has been put right meanwhile: it takes the place of what was read before.
      const again = new Set(read.map(({ path }) => split(path).name));
      onFiles([...files.filter(({ path }) => !again.has(split(path).name)), ...read]);
    });
  const move = (index: number, folder: string) =>
    onFiles(files.map((file, at) => (at === index ? { ...file, path: `${folder}/${split(file.path).name}` } : file)));
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
            <label class="field">
              <span class="mono">{name}</span>
              <select value={folder} onChange={(event) => move(index, event.currentTarget.value)} data-test={`folder-${name}`}>
                {FOLDERS.map((one) => (
                  <option key={one} value={one}>{t(`folder-${one.replace("/", "-")}`)}</option>
                ))}
              </select>
            </label>
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
