// The board itself: how many of what, the machines, and a sheet beside them for whatever was opened.
import { route } from "../src/route";
import type { Board } from "../src/types";
import { t } from "../src/words";
import { Counts } from "./counts";
import { filter, shown } from "./filter";
import { Choose } from "./choose";
import { Machines } from "./machines";
import { Invented } from "./parts/invented";
import { Sheet } from "./sheet";
import type { Place } from "./state";
import { ChooseLanguage } from "./tongue";
import { Top } from "./top";

export function Wall({ board, place, again }: { board: Board; place: Place; again: () => Promise<void> }) {
  const rows = shown(board, filter.value);
  return (
    <div class="wall">
      <Top board={board} place={place} />
      <main>
        {place.invented && <Invented />}
        <Counts board={board} />
        <Choose board={board} shown={rows.length} />
        {rows.length > 0 && <Machines rows={rows} board={board} />}
      </main>
      <footer class="cautions" aria-label={t("cautions")}>
        <p class="strong" data-test="caution">{t("wall-no-permission")}</p>
        {place.cautions.map((caution) => <p key={caution}>{caution}</p>)}
        <ChooseLanguage again={again} />
      </footer>
      {route.value.length > 0 && <Sheet parts={route.value} board={board} place={place} />}
    </div>
  );
}
