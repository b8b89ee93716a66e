// What was prepared, to be signed by a device; told when that was done.
import { Code } from "../../src/parts/code";
import type { CodeOut } from "../../src/types";
import { t } from "../../src/words";
import { drafts } from "../state";

export interface Prepared {
  id: string;
  code: CodeOut;
}

export function SignThere({ prepared }: { prepared: Prepared }) {
  const waits = drafts.value.some(({ id }) => id === prepared.id);
  return (
    <section class="sign-there" data-test="sign-there" data-waits={waits}>
      <p role="status" class="headline">{t(waits ? "wall-sign-there" : "wall-signed")}</p>
      {waits && (
        <>
          <p>{t("wall-sign-there-how")}</p>
          <Code code={prepared.code} words={t("wall-sign-there-code")} />
        </>
      )}
    </section>
  );
}
