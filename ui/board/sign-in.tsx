// Signing in: a device opens this page's code and says who it is; or a passphrase, to look only.
import { useEffect, useState } from "preact/hooks";
import { asFault, type Fault } from "../src/calls";
import { useAct } from "../src/hooks";
import { Code } from "../src/parts/code";
import { FaultNote } from "../src/parts/fault";
import { Field } from "../src/parts/field";
import type { CodeOut } from "../src/types";
import { t } from "../src/words";
import { get, post } from "./ask";
import { Invented } from "./parts/invented";
import type { Place } from "./state";
import { ChooseLanguage } from "./tongue";

/** How often the page asks whether its code was confirmed, ms. */
const ASK_EVERY = 1_500;

interface Begun {
  id: string;
  code: CodeOut;
}

export function SignIn({ place, done }: { place: Place; done: () => Promise<void> }) {
  return (
    <main class="sign-in" data-test="sign-in">
      <div class="sign-in-words">
        <p class="soft">{t("wall-title")}</p>
        <h1>{place.school}</h1>
        {place.invented && <Invented />}
        <h2>{t("wall-sign-in")}</h2>
        <ol class="steps">
          <li>{t("wall-step-open")}</li>
          <li>{t("wall-step-scan")}</li>
          <li>{t("wall-step-pin")}</li>
        </ol>
        <p class="soft">{t("wall-sign-in-why")}</p>
        {place.passphrase && <Passphrase done={done} />}
        <ChooseLanguage again={done} />
      </div>
      <PageCode done={done} />
    </main>
  );
}

function PageCode({ done }: { done: () => Promise<void> }) {
  const { begun, fault, again } = useCode(done);
  return (
    <div class="sign-in-code">
      {begun && !fault && <Code code={begun.code} words={t("wall-code")} />}
      <FaultNote fault={fault} />
      {fault && <button type="button" onClick={again} data-test="code-anew">{t("wall-code-anew")}</button>}
    </div>
  );
}

/** This page's code, asked after until a device has confirmed it or its time is over. */
function useCode(done: () => Promise<void>) {
  const [begun, setBegun] = useState<Begun | null>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let clock: number | undefined;
    let over = false;
    const failed = (thrown: unknown) => void (over || setFault(asFault(thrown)));
    const poll = async (id: string) => {
      if (over) return;
      const { signed_in } = await get<{ signed_in: boolean }>(`sign-in/${id}`);
      if (signed_in) return done();
      clock = window.setTimeout(() => void poll(id).catch(failed), ASK_EVERY);
    };
    setFault(null);
    post<Begun>("sign-in", {}).then((code) => (over ? undefined : (setBegun(code), poll(code.id)))).catch(failed);
    return () => {
      over = true;
      clearTimeout(clock);
    };
  }, [turn]);
  return { begun, fault, again: () => setTurn(turn + 1) };
}

function Passphrase({ done }: { done: () => Promise<void> }) {
  const [words, setWords] = useState("");
  const { busy, fault, act } = useAct();
  const go = () =>
    act(async () => {
      await post("passphrase", { passphrase: words });
      await done();
    });
  return (
    <details>
      <summary data-test="passphrase-open">{t("wall-passphrase-open")}</summary>
      <form onSubmit={(event) => (event.preventDefault(), void go())}>
        <Field
          words={t("wall-passphrase")}
          hint={t("wall-passphrase-hint")}
          value={words}
          onValue={setWords}
          test="passphrase"
          input={{ type: "password", autocomplete: "current-password" }}
        />
        <FaultNote fault={fault} />
        <button type="submit" aria-disabled={busy} data-test="passphrase-go">{t("wall-passphrase-go")}</button>
      </form>
    </details>
  );
}
