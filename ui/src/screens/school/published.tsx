// Lists and data sheets that came from the school, the ones in use first.
import { to } from "../../route";
import type { PublishedView } from "../../types";
import { t } from "../../words";

export function Published({ published, publishes }: { published: PublishedView[]; publishes: boolean }) {
  return (
    <section aria-labelledby="published">
      <h2 id="published">{t("published")}</h2>
      {published.length === 0 && <p class="soft">{t("published-none")}</p>}
      <ul class="rows">
        {published.map((one) => (
          <li key={one.record}>
            <a href={to("record", one.record)} data-test="published" data-used={one.used}>
              <span class="grow">
                <span class="line">
                  <span class="strong">{one.title}</span>
                  <span class="num soft">{t("published-version", { version: one.version })}</span>
                </span>
                {one.note && <span class="block">{one.note}</span>}
                <span class="block soft">{one.by} · {t(one.used ? "published-used" : "published-before")}</span>
                <span class="block soft">{one.files.join(", ")}</span>
              </span>
            </a>
          </li>
        ))}
      </ul>
      {publishes && <a class="button" href={to("school", "publish")} data-test="to-publish">{t("publish")}</a>}
    </section>
  );
}
