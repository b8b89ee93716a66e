// Components with a time in service of their own.
import { to } from "../../route";
import type { ComponentView } from "../../types";
import { t } from "../../words";

export function ComponentRows({ machine, components }: { machine: string; components: ComponentView[] }) {
  return (
    <section aria-labelledby="components">
      <h2 id="components">{t("components")}</h2>
      {components.length === 0 && <p class="soft">{t("components-none")}</p>}
      <ul class="rows">
        {components.map((one) => (
          <li key={one.id}>
            <a href={one.fitted ? to("machine", machine, "component", one.id) : to("record", one.record)} data-test={`component-${one.id}`} data-fitted={one.fitted}>
              <span class="grow">
                <span class="line">
                  <span class="strong">{one.name}</span>
                  <span class="num soft">{one.words}</span>
                </span>
                <span class="block soft">
                  {one.part_words}
                  {one.serial && ` · ${one.serial}`}
                  {!one.fitted && ` · ${t("component-off")}`}
                </span>
              </span>
            </a>
          </li>
        ))}
      </ul>
      <p class="links">
        <a href={to("machine", machine, "component", "new")} data-test="component-new">{t("component-new")}</a>
      </p>
    </section>
  );
}
