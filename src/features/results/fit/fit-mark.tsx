import type { FitTally } from "./fit-picture";

const CELL = 26;
const HEIGHT = 22;
/** Below the letter in the middle of the measuring line. */
const BELOW = 14;

/** Three counts side by side: tight on the left, right in the middle, loose on the right. The largest is filled. */
export function FitMark({
  tally: { tight, right, loose },
  title,
}: {
  readonly tally: FitTally;
  readonly title: string;
}) {
  const counts = [tight, right, loose];
  const most = Math.max(...counts);
  const left = -1.5 * CELL;
  return (
    <g role="img" aria-label={title} className="text-[0.8rem]">
      <title>{title}</title>
      <rect
        x={left - 12}
        y={BELOW}
        width={3 * CELL + 24}
        height={HEIGHT}
        rx={HEIGHT / 2}
        className="fill-sheet stroke-line-strong"
      />
      <path d={arrow(left - 3, -1)} className="fill-soft" />
      <path d={arrow(left + 3 * CELL + 3, 1)} className="fill-soft" />
      {counts.map((count, index) => {
        const isMost = count === most && most > 0;
        const x = left + (index + 0.5) * CELL;
        return (
          <g key={index}>
            {isMost ? (
              <rect x={x - 11} y={BELOW + 2} width={22} height={HEIGHT - 4} rx={9} className="fill-ink" />
            ) : null}
            <text
              x={x}
              y={BELOW + HEIGHT / 2 + 4.5}
              textAnchor="middle"
              className={isMost ? "fill-sheet font-semibold" : "fill-soft"}
            >
              {count === 0 ? "·" : count}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function arrow(x: number, way: -1 | 1): string {
  const y = BELOW + HEIGHT / 2;
  return `M${x},${y - 4}L${x + 5 * way},${y}L${x},${y + 4}Z`;
}
