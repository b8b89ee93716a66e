// How people look: what stands out first, then time and findings beside everybody's; in the app and on the board.
import type { LookingPerson, LookingReport } from "../../types";
import { t } from "../../words";
import { Pair } from "./bars";

export function LookingBody({ report: { people, caution }, heading }: { report: LookingReport; heading: "h2" | "h3" }) {
  return (
    <>
      <p class="cautions" data-test="looking-caution">{caution}</p>
      {people.length === 0 && <p data-test="looking-none">{t("looking-none")}</p>}
      <div class="people">
        {first(people).map((person, index) => <Person key={index} person={person} at={index} heading={heading} />)}
      </div>
    </>
  );
}

/** Those of whom something stands out, then the others. */
function first(people: LookingPerson[]): LookingPerson[] {
  const rank = ({ sentences }: LookingPerson) => (sentences.length > 0 ? 0 : 1);
  return [...people].sort((a, b) => rank(a) - rank(b));
}

function Person({ person, at, heading: Heading }: { person: LookingPerson; at: number; heading: "h2" | "h3" }) {
  const { name, you, inspections, looks, sentences, points } = person;
  return (
    <section class="person-looks" aria-labelledby={`looks-${at}`} data-test={`looks-${name}`} data-you={you}>
      <Heading id={`looks-${at}`}>{you ? t("looking-you", { name }) : name}</Heading>
      <p class="soft">{t("looking-inspections", { count: inspections, looks })}</p>
      {sentences.length > 0 ? (
        <ul class="stack painted">{sentences.map((sentence) => <li key={sentence} class="strong">{sentence}</li>)}</ul>
      ) : (
        <p>{t("looking-nothing")}</p>
      )}
      <Compared person={person} />
      {points.length > 0 && (
        <>
          <p>{t("looking-points")}</p>
          <ul class="plain-list">{points.map((point) => <li key={point}>{point}</li>)}</ul>
        </>
      )}
    </section>
  );
}

/** Beside the others, where enough of them look at the same points. */
function Compared({ person }: { person: LookingPerson }) {
  const { seconds, fleet_seconds, hurried_percent, fleet_hurried_percent, found_percent, fleet_found_percent } = person;
  return (
    <>
      <Pair
        words={t("looking-seconds")}
        own={seconds}
        fleet={fleet_seconds}
        ownWords={t("looking-own-seconds", { seconds })}
        fleetWords={(fleet) => t("looking-fleet-seconds", { seconds: fleet })}
      />
      <Pair
        words={t("looking-hurried")}
        own={hurried_percent}
        fleet={fleet_hurried_percent}
        ownWords={t("looking-own-count", { count: hurried_percent })}
        fleetWords={(fleet) => t("looking-fleet-count", { count: fleet })}
      />
      <Pair
        words={t("looking-found")}
        own={found_percent}
        fleet={fleet_found_percent}
        ownWords={t("looking-own-count", { count: found_percent })}
        fleetWords={(fleet) => t("looking-fleet-count", { count: fleet })}
      />
    </>
  );
}
