// Work that lacks nothing but another person's eyes, and the code by which their phone gives the second look.
import { Caution } from "../../src/parts/cautions";
import { Code } from "../../src/parts/code";
import { FaultNote } from "../../src/parts/fault";
import { to } from "../../src/route";
import type { Board, CodeOut } from "../../src/types";
import { t } from "../../src/words";
import { useGet } from "../ask";
import { SheetTitle } from "../sheet";

export function SecondSheet({ board, machine }: { board: Board; machine?: string | undefined }) {
  if (machine) return <Ask board={board} machine={machine} />;
  return (
    <>
      <SheetTitle>{t("wall-second-title")}</SheetTitle>
      {board.second.length === 0 && <p>{t("wall-second-none")}</p>}
      <ul class="rows">
        {board.second.map((one) => (
          <li key={one.machine}>
            <a href={to("second", one.machine)} data-test={`second-${one.machine}`}>
              <span class="grow">
                <span class="strong">{one.name}</span> <span class="block">{one.title}</span>{" "}
                <span class="block soft">{t("board-second-by", { name: one.by })}</span>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </>
  );
}

function Ask({ board, machine }: { board: Board; machine: string }) {
  const { value, fault, again } = useGet<CodeOut>(`second-look/${encodeURIComponent(machine)}`);
  const name = board.rows.find(({ card }) => card.id === machine)?.card.name ?? "";
  const waits = board.second.find((one) => one.machine === machine);
  return (
    <>
      <SheetTitle over={name}>{t("wall-second-title")}</SheetTitle>
      {waits && <p><span class="strong">{waits.title}</span> <span class="block soft">{t("board-second-by", { name: waits.by })}</span></p>}
      <Caution words={t("wall-second-caution")} />
      <p>{t("wall-second-how")}</p>
      {value && <Code code={value} words={t("wall-second-title")} />}
      <FaultNote fault={fault} again={again} />
    </>
  );
}
