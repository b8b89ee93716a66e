// A code short enough to be read out, large enough to be compared across a table.
import { t } from "../../words";

export function Spoken({ code, words, test }: { code: string; words: string; test: string }) {
  return (
    <p class="spoken">
      <span class="soft">{words}</span>
      <span class="mono" data-test={test}>
        {/* The parts may stand below each other; within a part nothing breaks. */}
        {code.split("-").map((part, index) => (
          <span key={index} class="nobreak">
            {index > 0 && "-"}
            {part}
          </span>
        ))}
      </span>
    </p>
  );
}

/** The two codes that tell who and which school. */
export function OwnCode({ code }: { code: string }) {
  return <Spoken code={code} words={t("school-own-code")} test="own-code" />;
}
