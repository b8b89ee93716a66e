// Members and their machines.
import { to } from "../../src/route";
import type { Board } from "../../src/types";
import { t } from "../../src/words";
import { SheetTitle } from "../sheet";

export function Members({ board }: { board: Board }) {
  return (
    <>
      <SheetTitle>{t("board-people")}</SheetTitle>
      <ul class="rows">
        {board.people.map((one) => (
          <li key={one.person} class="member" data-test={`person-${one.person}`}>
            <p class="line"><span class="strong">{one.name}</span> <span>{one.role_words}</span></p>
            {one.machines.length === 0 && <p class="soft">{t("board-no-machine")}</p>}
            <ul class="links">
              {board.rows.filter(({ person }) => person === one.person).map(({ card }) => (
                <li key={card.id}><a href={to("machine", card.id)}>{card.name}</a></li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </>
  );
}
