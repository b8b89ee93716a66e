// Two numbers beside each other as lengths: one's own filled, everybody's in outline; the numbers stand beside them.
interface PairProps {
  words: string;
  own: number;
  /** None where too few others look. */
  fleet: number | null;
  ownWords: string;
  fleetWords: (fleet: number) => string;
}

export function Pair({ words, own, fleet, ownWords, fleetWords }: PairProps) {
  const most = Math.max(own, fleet ?? 0) || 1;
  return (
    <div class="pair">
      <p class="soft">{words}</p>
      <Length share={own / most} words={ownWords} look="own" />
      {fleet !== null && <Length share={fleet / most} words={fleetWords(fleet)} look="fleet" />}
    </div>
  );
}

function Length({ share, words, look }: { share: number; words: string; look: "own" | "fleet" }) {
  return (
    <p class={`length ${look}`}>
      <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
        <rect x="0.5" y="1" width={Math.max(1, 98 * share)} height="8" />
      </svg>
      <span class="num">{words}</span>
    </p>
  );
}

/** A share with its interval, in percent, on a line from none to the most that is drawn. */
export function ShareBar({ percent, low, high, most }: { percent: number; low: number; high: number; most: number }) {
  const at = (share: number) => Math.min(100, (100 * share) / most);
  return (
    <svg class="share-bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
      <path class="all" d="M0 5H100" />
      <path class="room" d={`M${at(low)} 5H${at(high)}`} />
      <path class="found" d={`M${at(percent)} 0V10`} />
    </svg>
  );
}
