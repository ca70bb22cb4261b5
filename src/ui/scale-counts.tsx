interface ScaleCountsProps {
  readonly title: string;
  /** How many stand at each step of a scale, from one end to the other. */
  readonly counts: readonly number[];
}

const HEIGHT = 30;

/** How many stand at each step of a scale: a disc with its number, a tick where nobody does. */
export function ScaleCounts({ title, counts }: ScaleCountsProps) {
  const middle = (counts.length - 1) / 2;
  return (
    <svg width="100%" height={HEIGHT} role="img" aria-label={title} className="numbers block text-[0.8rem]">
      <title>{title}</title>
      <line x1="4%" x2="96%" y1={HEIGHT / 2} y2={HEIGHT / 2} className="stroke-line-strong" />
      {counts.map((count, at) => (
        <svg key={at} x={`${(100 * (at + 0.5)) / counts.length}%`} y={HEIGHT / 2} overflow="visible">
          {count === 0 ? (
            <line y1={at === middle ? -8 : -4} y2={at === middle ? 8 : 4} className="stroke-line-strong" />
          ) : (
            <>
              <circle r="10.5" className="fill-ink" />
              <text y="4.5" textAnchor="middle" className="fill-sheet font-semibold">
                {count}
              </text>
            </>
          )}
        </svg>
      ))}
    </svg>
  );
}
