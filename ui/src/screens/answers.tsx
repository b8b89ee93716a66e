// A point's own answers, each with the shape of what it means.
import { useState } from "preact/hooks";
import { MeaningShape, meaningWords } from "../parts/shape";
import type { AnswerView, Given, GivenView } from "../types";
import { t } from "../words";

interface AnswersProps {
  answers: AnswerView[];
  given: GivenView | null;
  busy: boolean;
  onAnswer: (given: Given) => void;
}

export function Answers({ answers, given, busy, onAnswer }: AnswersProps) {
  const [tapped, setTapped] = useState<string | null>(null);
  const before = given && "answer" in given.given ? given.given.answer : null;
  return (
    <div class="answers" role="group" aria-label={t("answers")} aria-busy={busy}>
      {answers.map((answer) => (
        <button
          key={answer.id}
          type="button"
          class={`answer ${busy && tapped === answer.id ? "pending" : ""}`}
          aria-pressed={before === null ? undefined : before === answer.id}
          aria-disabled={busy}
          onClick={() => {
            setTapped(answer.id);
            onAnswer({ answer: answer.id });
          }}
          data-test={`answer-${answer.id}`}
          data-means={answer.means}
        >
          <MeaningShape means={answer.means} />
          <span class="grow">{answer.words}</span>
          <span class="unseen">, {meaningWords(answer.means)}</span>
          {before === answer.id && <span class="mine soft">{t("answer-yours")}</span>}
        </button>
      ))}
    </div>
  );
}
