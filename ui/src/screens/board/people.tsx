// Members and their machines.
import { to } from "../../route";
import type { BoardPerson } from "../../types";
import { t } from "../../words";

export function People({ people }: { people: BoardPerson[] }) {
  if (people.length === 0) return null;
  return (
    <section aria-labelledby="people">
      <h2 id="people">{t("board-people")}</h2>
      <ul class="rows">
        {people.map((one) => (
          <li key={one.person}>
            <a href={to("school", "member", one.person)} data-test={`person-${one.person}`}>
              <span class="grow">
                <span class="line">
                  <span class="strong">{one.name}</span>
                  <span>{one.role_words}</span>
                </span>
                <span class="block soft">{one.machines.length > 0 ? one.machines.join(", ") : t("board-no-machine")}</span>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
