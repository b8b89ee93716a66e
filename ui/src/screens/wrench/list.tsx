// The torque tools: which may be used, and why not.
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { MeaningShape } from "../../parts/shape";
import { to } from "../../route";
import { t } from "../../words";

export function ToolList() {
  const { value, fault, again } = useLoad("tools", {});
  const back = { href: "#/", words: t("to-machines") };
  if (!value) return <Waiting screen="torque-tools" fault={fault} again={again} back={back} />;
  return (
    <Page
      screen="torque-tools"
      title={t("tool-list")}
      back={back}
      foot={<a class="button go" href={to("tools", "new")} data-test="tool-new">{t("tool-new")}</a>}
    >
      <p class="soft">{t("tool-list-what")}</p>
      {value.length === 0 && <p>{t("tool-list-none")}</p>}
      <ul class="rows">
        {value.map(({ kept, cycles, usable, words }) => (
          <li key={kept.tool}>
            <a href={to("tools", kept.tool)} data-test={`tool-${kept.tool}`} data-usable={usable}>
              <MeaningShape means={usable ? "serviceable" : "unserviceable"} />
              <span class="unseen">{t(usable ? "tool-usable" : "tool-unusable")} </span>
              <span class="grow">
                <span class="strong">{kept.name}</span> <span class="block">{words}</span>{" "}
                <span class="block soft">{t("tool-cycles", { cycles, allowed: kept.every_cycles })}</span>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </Page>
  );
}
