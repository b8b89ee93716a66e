// The inspection said back before it is signed: what was seen, what was hurried, what was left.
import { useState } from "preact/hooks";
import { call } from "../calls";
import { useAct, useLoad } from "../hooks";
import { FaultNote } from "../parts/fault";
import { Hold } from "../parts/hold";
import { Page, Waiting } from "../parts/page";
import { PaintMark } from "../parts/mark";
import { Some } from "../parts/some";
import { EmptyShape, MeaningShape, StateShape } from "../parts/shape";
import { turnTo } from "../route";
import { finished } from "../state";
import type { Summary as Said, Walk } from "../types";
import { mapOf, pointOf } from "../walking";
import { t } from "../words";
import { FlightRow } from "./flight/row";
import { SignSheet } from "./sign";
import { StepBack } from "./step-back";

export function Summary({ walk }: { walk: Walk }) {
  const { value, fault, again } = useLoad("summary", { walk: walk.id });
  const [signing, setSigning] = useState(false);
  const aside = useAct();
  const back = { href: mapOf(walk), words: t("summary-back") };
  if (!value) return <Waiting screen="summary" fault={fault} again={again} back={back} />;

  const end = (...place: string[]) => {
    finished.value = { machine: walk.machine, occasion: walk.occasion, place };
    turnTo(...place);
  };
  const putAside = () =>
    aside.act(async () => {
      await call("put-aside", { walk: walk.id });
      end("machine", walk.machine);
    });

  return (
    <Page
      screen="summary"
      title={t("summary-title")}
      over={t("walk-over", { list: `${walk.machine_name} · ${walk.words}`, done: value.done, of: value.of })}
      back={back}
      picture={<Preview said={value} />}
      foot={
        <>
          <p class="soft">{t("sign-means")}</p>
          <Hold words={t("sign-hold")} onHeld={() => setSigning(true)} test="hold-to-sign" />
          <div class="tools">
            <button type="button" class="tool" onClick={() => setSigning(true)} data-test="sign-with-pin">
              {t("sign-plain")}
            </button>
            <button type="button" class="tool" aria-disabled={aside.busy} onClick={putAside} data-test="put-aside">
              {t("put-aside")}
            </button>
            <StepBack walk={walk} busy={aside.busy} act={aside.act} />
          </div>
        </>
      }
    >
      <FaultNote fault={aside.fault} again={aside.again} />
      {value.sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {walk.occasion === "before-flight" && <FlightRow machine={walk.machine} occasion={walk.occasion} />}
      <Found walk={walk} said={value} />
      <Left walk={walk} said={value} />
      <Hurried walk={walk} said={value} />
      {signing && (
        <SignSheet
          walk={walk.id}
          onSigned={() => end("machine", walk.machine, "verdict")}
          onClose={() => setSigning(false)}
        />
      )}
    </Page>
  );
}

function Preview({ said }: { said: Said }) {
  const { preview } = said;
  return (
    <section class={`preview ${preview.state}`} aria-label={t("summary-preview")} data-test="preview" data-state={preview.state}>
      <div class="sign">
        <StateShape state={preview.state} size={56} />
        <PaintMark state={preview.state} />
      </div>
      <p class="soft">{t("summary-preview")}</p>
      <p class="headline">{preview.headline}</p>
      <Some look="plain-list" rows={preview.reasons.map((reason, index) => <li key={index}>{reason.words}</li>)} />
    </section>
  );
}

function Found({ walk, said }: { walk: Walk; said: Said }) {
  if (said.found.length === 0) return null;
  return (
    <section aria-labelledby="found">
      <h2 id="found">{t("summary-found", { count: said.found.length })}</h2>
      <ul class="rows">
        {said.found.map((found) => (
          <li key={found.id}>
            <a href={pointOf(walk, found.id)} data-test={`found-${found.id}`}>
              <MeaningShape means={found.means} said />
              <span class="grow">
                <span class="strong">{found.title}</span> <span class="block">{found.words}</span>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Left({ walk, said }: { walk: Walk; said: Said }) {
  if (said.left.length === 0) return null;
  return (
    <section aria-labelledby="left">
      <h2 id="left">{t("summary-left", { count: said.left.length })}</h2>
      <Some
        rows={said.left.map((left) => (
          <li key={left.id}>
            <a href={pointOf(walk, left.id)} data-test={`left-${left.id}`}>
              <EmptyShape />
              <span class="grow">
                <span class="strong">{left.words}</span> {left.must && <span class="block stop">{t("left-must")}</span>}
              </span>
            </a>
          </li>
        ))}
      />
    </section>
  );
}

function Hurried({ walk, said }: { walk: Walk; said: Said }) {
  if (said.hurried.length === 0) return null;
  return (
    <section aria-labelledby="hurried">
      <h2 id="hurried">{t("summary-hurried", { count: said.hurried.length })}</h2>
      <Some
        rows={said.hurried.map((point) => (
          <li key={point.id}>
            <a href={pointOf(walk, point.id)} data-test={`hurried-${point.id}`}>
              <span class="grow">
                <span class="strong">{point.words}</span> <span class="block underlined">{t("summary-look-again")}</span>
              </span>
            </a>
          </li>
        ))}
      />
    </section>
  );
}
