// Says that it exists only in the demonstration.
import { t } from "../../src/words";

export const Invented = () => <span class="invented">{t("wall-invented")}</span>;
