// What falls due on a machine, nearest first.
import { MeaningShape } from "../../parts/shape";
import { to } from "../../route";
import type { DueView, Meaning, Standing } from "../../types";
import { t } from "../../words";

const MEANS: Record<Standing, Meaning> = { later: "serviceable", soon: "watch", tolerated: "watch", over: "unserviceable" };

export function DueRows({ machine, due }: { machine: string; due: DueView[] }) {
  return (
    <section aria-labelledby="due">
      <h2 id="due">{t("due")}</h2>
      {due.length === 0 && <p class="soft">{t("due-none")}</p>}
      <ul class="rows">
        {due.map((item) => (
          <li key={item.record + item.title}>
            <a
              href={item.kept ? to("machine", machine, "due", item.id) : to("record", item.record)}
              data-test={`due-${item.id || item.title}`}
              data-standing={item.standing}
            >
              <MeaningShape means={MEANS[item.standing]} />
              <span class="unseen">{t(`due-${item.standing}`)} </span>
              <span class="grow">
                <span class="strong">{item.title}</span> <span class="block">{item.left}</span>{" "}
                {item.forecast && <span class="block soft">{item.forecast}</span>}
              </span>
            </a>
          </li>
        ))}
      </ul>
      <p class="links">
        <a href={to("machine", machine, "due", "new")} data-test="due-new">{t("due-new")}</a>
      </p>
    </section>
  );
}
