// What the second person saw, joint by joint.
import { MeaningShape } from "../../parts/shape";
import { TextArea } from "../../parts/field";
import type { JointSeen, Meaning, Named } from "../../types";
import { t } from "../../words";

/** What was answered so far, by joint. */
export type Seen = Record<string, { means: Meaning | null; note: string }>;

export function Joints({ joints, seen, onSeen }: { joints: Named[]; seen: Seen; onSeen: (seen: Seen) => void }) {
  const of = (id: string) => seen[id] ?? { means: null, note: "" };
  const answer = (joint: Named, means: Meaning, words: string) => (
    <label class="choice">
      <input
        type="radio"
        name={`joint-${joint.id}`}
        checked={of(joint.id).means === means}
        onChange={() => onSeen({ ...seen, [joint.id]: { ...of(joint.id), means } })}
        data-test={`joint-${joint.id}-${means}`}
      />
      <MeaningShape means={means} />
      <span class="grow">{words}</span>
    </label>
  );
  return (
    <>
      {joints.map((joint) => (
        <fieldset key={joint.id} data-test={`joint-${joint.id}`}>
          <legend>{joint.words}</legend>
          {answer(joint, "serviceable", t("joint-good"))}
          {answer(joint, "unserviceable", t("joint-wanting"))}
          {(of(joint.id).means === "unserviceable" || of(joint.id).note !== "") && (
            <TextArea
              words={t("joint-note", { joint: joint.words })}
              value={of(joint.id).note}
              onValue={(note) => onSeen({ ...seen, [joint.id]: { ...of(joint.id), note } })}
              test={`joint-${joint.id}-note`}
              rows={2}
            />
          )}
        </fieldset>
      ))}
    </>
  );
}

/** As the core takes it; a joint that isn't answered is left out, and the core says so. */
export function told(joints: Named[], seen: Seen): JointSeen[] {
  return joints.flatMap(({ id }) => {
    const { means, note } = seen[id] ?? { means: null, note: "" };
    return means ? [{ joint: id, means, note }] : [];
  });
}
