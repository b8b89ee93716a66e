// Every machine of the school, those that need a person first: a table on a wide screen, cards in the hand.
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import type { Board } from "../../types";
import { t } from "../../words";
import { Invented } from "../machines";
import { Cards } from "./cards";
import { EVERY, Filters, passing, type Filter } from "./filters";
import { People } from "./people";
import { Table } from "./table";
import { useWide } from "./wide";

export function BoardScreen() {
  const { value, fault, again } = useLoad("board", {});
  const [filter, setFilter] = useDraft<Filter>("board/filter", EVERY);
  const wide = useWide();
  const back = value?.school ? { href: to("school"), words: value.school.name } : { href: "#/", words: t("to-machines") };
  if (!value) return <Waiting screen="board" fault={fault} again={again} back={back} />;
  const rows = passing(value, filter);
  return (
    <Page screen="board" broad title={t("board")} over={t("board-counts", counts(value))} back={back}>
      {value.school?.invented && <Invented />}
      <Waits board={value} />
      {value.rows.length === 0 ? (
        <p>{t("board-none")}</p>
      ) : (
        <>
          <Filters board={value} filter={filter} onFilter={setFilter} />
          <p role="status" class={rows.length === value.rows.length ? "unseen" : "soft"} data-test="board-shown">
            {t("board-shown", { count: rows.length, of: value.rows.length })}
          </p>
          {wide ? <Table rows={rows} /> : <Cards rows={rows} />}
        </>
      )}
      <People people={value.people} />
    </Page>
  );
}

function counts({ rows }: Board) {
  const of = (state: string) => rows.filter(({ card }) => card.verdict.state === state).length;
  return { count: rows.length, grounded: of("grounded"), limited: of("limited"), fit: of("fit") };
}

/** Work that lacks nothing but another person's eyes. */
function Waits({ board: { second } }: { board: Board }) {
  if (second.length === 0) return null;
  return (
    <section aria-labelledby="second-waits">
      <h2 id="second-waits">{t("board-second", { count: second.length })}</h2>
      <ul class="rows">
        {second.map((one) => (
          <li key={one.machine}>
            <a href={to("look", one.machine)} data-test={`second-${one.machine}`}>
              <span class="grow">
                <span class="strong">{one.name}</span> <span class="block">{one.title}</span>{" "}
                <span class="block soft">{t("board-second-by", { name: one.by })}</span>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
