// Types of component of which lives can be told, and on how few that rests; in the app and on the board.
import { to } from "../../route";
import type { LifePart } from "../../types";
import { t } from "../../words";

export function PartsList({ parts }: { parts: LifePart[] }) {
  if (parts.length === 0) return <p data-test="fleet-none">{t("fleet-none")}</p>;
  // Said once where it is so of all.
  const all = parts.every(({ invented }) => invented);
  return (
    <>
      {all && <span class="invented">{t("invented")}</span>}
      <Rows parts={parts} said={all} />
    </>
  );
}

function Rows({ parts, said }: { parts: LifePart[]; said: boolean }) {
  return (
    <ul class="rows">
      {parts.map(({ id, words, machines, lives, failed, invented }) => (
        <li key={id}>
          <a href={to("fleet", id)} data-test={`life-${id}`} data-failed={failed}>
            <span class="grow">
              <span class="block strong">{words}</span> <span class="block soft">{t("fleet-counts", { machines, lives, failed })}</span>
              {invented && !said && <span class="invented">{t("invented")}</span>}
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}
