// Either nobody is signed in, or the board is shown.
//
// What a journey touches carries `data-test`:
//   sign in   code, code-out, passphrase-open, passphrase, passphrase-go, code-anew
//   board     live (data-state), who, sign-out, count-STATE, count-defects, count-due, count-second, search, owner, sort,
//             shown, row-ID (data-state), open-ID, to-members, to-second, to-prepared, to-publish, to-fleet, to-worth,
//             to-looking, caution
//   sheet     close, sheet (data-sheet); machine: reason-…, defer-POINT, due-TITLE, entry-KIND; defer-hours, -flights, -date,
//             -condition, -reason, prepare; then code; publish: publish-files, publish-title, publish-note, prepare
//             fleet: life-COMPONENT; life, looking, worth: as in the app
//   anywhere  language, fault (data-kind), try-again
import { useEffect, useState } from "preact/hooks";
import { asFault, type Fault } from "../src/calls";
import { FaultNote } from "../src/parts/fault";
import { language, speak, t } from "../src/words";
import { get } from "./ask";
import { follow } from "./live";
import { wished } from "./tongue";
import { Wall } from "./wall";
import { SignIn } from "./sign-in";
import { board, place, type Place } from "./state";

export function App() {
  const [fault, setFault] = useState<Fault | null>(null);
  const begin = () => lookAtPlace().then(() => setFault(null), (thrown) => setFault(asFault(thrown)));
  useEffect(() => void begin(), []);
  const signedIn = Boolean(place.value?.signed_in);
  useEffect(() => (signedIn ? follow() : undefined), [signedIn, language.value]);
  useEffect(() => {
    document.title = `${place.value?.school ? `${place.value.school} · ` : ""}${t("wall-title")}`;
  }, [place.value?.school, language.value]);
  if (!place.value)
    return (
      <main class="waits">
        {fault ? <h1>{t("waiting-failed")}</h1> : <h1 class="late soft">{t("waiting")}</h1>}
        <FaultNote fault={fault} again={begin} />
      </main>
    );
  if (!signedIn) return <SignIn place={place.value} done={begin} />;
  return board.value ? <Wall board={board.value} place={place.value} again={begin} /> : <main class="waits"><h1 class="late soft">{t("waiting")}</h1></main>;
}

async function lookAtPlace() {
  const told = await get<Place>("session");
  speak(wished());
  place.value = told;
}
