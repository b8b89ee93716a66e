// What the tool is set to, in digits that are read from the ground.
import type { TorqueAsk, TorqueStep, TorqueView } from "../../types";
import { t } from "../../words";

export function Setting({ view, next, ask }: { view: TorqueView; next: TorqueStep | undefined; ask: TorqueAsk }) {
  const now = next?.setting ?? view.setting;
  const [value, ...unit] = now.split(" ");
  const rounds = view.steps.at(-1)?.stage ?? 1;
  return (
    <div class="setting">
      {view.against.length > 0 && (
        <p class="against" data-test="against">
          <strong>{t(view.standing === "refused" ? "torque-refused" : "torque-watched")}</strong> {view.against.join(" ")}
        </p>
      )}
      <p class="line">
        <span class="soft">{next ? next.stage_words : t("torque-all-clicked")}</span>
        {next && <span class="soft num">{t("torque-round", { round: next.stage, rounds })}</span>}
      </p>
      <p class="setting-digits" data-test="setting">
        <span class="setting-value">{value}</span> <span class="setting-unit">{unit.join(" ")}</span>
      </p>
      <p class="soft">
        {now === view.setting
          ? t("torque-set-full", { other: view.setting_other, band: ask.words })
          : t("torque-set-part", { full: view.setting, band: ask.words })}
      </p>
      <p class="unconfirmed">{ask.source}</p>
    </div>
  );
}
