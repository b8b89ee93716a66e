// The nuts as they lie on the joint: what has clicked, what comes next, and the way across to it.
import type { Position, TorqueStep } from "../../types";

interface PatternProps {
  positions: Position[];
  /** This round's steps before the next one. */
  clicked: TorqueStep[];
  next: TorqueStep | undefined;
}

const SIZE = 320;
const MIDDLE = SIZE / 2;

export function Pattern({ positions, clicked, next }: PatternProps) {
  const reach = positions.length === 1 ? 0 : 104;
  // Many nuts on one circle come close together.
  const ring = Math.min(36, (Math.PI * reach) / Math.max(positions.length, 1) - 5) || 36;
  const at = (nut: number) => {
    const place = positions.find((position) => position.nut === nut);
    return { x: MIDDLE + (place?.x ?? 0) * reach, y: MIDDLE + (place?.y ?? 0) * reach };
  };
  const last = clicked.at(-1);
  return (
    <svg class="nuts" viewBox={`0 0 ${SIZE} ${SIZE}`} aria-hidden="true">
      <circle class="ground" cx={MIDDLE} cy={MIDDLE} r={152} />
      {[-60, -30, 0, 30, 60].map((y) => (
        <path key={y} class="fin" d={`M${MIDDLE - Math.sqrt(146 ** 2 - y * y)} ${MIDDLE + y}H${MIDDLE + Math.sqrt(146 ** 2 - y * y)}`} />
      ))}
      <circle class="bore" cx={MIDDLE} cy={MIDDLE} r={Math.min(34, reach / 3)} />
      {next && last && last.nut !== next.nut && <Across from={at(last.nut)} to={at(next.nut)} ring={ring} />}
      {positions.map(({ nut }) => {
        const { x, y } = at(nut);
        const done = clicked.some((step) => step.nut === nut);
        const here = next?.nut === nut;
        return (
          <g key={nut} class={`nut ${done ? "done" : ""} ${here ? "here" : ""}`}>
            {here && <circle class="pulse" cx={x} cy={y} r={ring} />}
            <circle class="disc" cx={x} cy={y} r={ring} />
            {done && <path class="paint-stroke" d={strokeToMiddle(x, y, ring)} />}
            <text x={x} y={y} style={{ fontSize: `${Math.max(14, ring * 0.65)}px` }}>{nut}</text>
          </g>
        );
      })}
    </svg>
  );
}

function Across({ from, to, ring }: { from: { x: number; y: number }; to: { x: number; y: number }; ring: number }) {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const long = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / long, dy / long];
  return (
    <path
      class="across"
      d={`M${from.x + ux * (ring + 4)} ${from.y + uy * (ring + 4)}L${to.x - ux * (ring + 8)} ${to.y - uy * (ring + 8)}`}
    />
  );
}

/** The paint goes from the nut onto the head, as it would be marked. */
function strokeToMiddle(x: number, y: number, ring: number): string {
  const long = Math.hypot(MIDDLE - x, MIDDLE - y);
  const [ux, uy] = long < 1 ? [0.8, -0.6] : [(MIDDLE - x) / long, (MIDDLE - y) / long];
  return `M${x + ux * ring * 0.6} ${y + uy * ring * 0.6}L${x + ux * (ring + 16)} ${y + uy * (ring + 16)}`;
}
