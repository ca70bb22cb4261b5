interface ScaleCountsProps {
  readonly title: string;
  /** How many stand at each step of a scale, from one end to the other. */
  readonly counts: readonly number[];
}

const MIDDLE = 15;

/** How many stand at each step of a scale: a disc with its number, a tick where nobody does. */
export function ScaleCounts({ title, counts }: ScaleCountsProps) {
  const middle = (counts.length - 1) / 2;
  return (
    <svg role="img" aria-label={title} className="scale-counts numbers">
      <title>{title}</title>
      <line x1="4%" x2="96%" y1={MIDDLE} y2={MIDDLE} />
      {counts.map((count, index) => (
        <svg key={index} x={`${(100 * (index + 0.5)) / counts.length}%`} y={MIDDLE} overflow="visible">
          {count === 0 ? (
            <line y1={index === middle ? -8 : -4} y2={index === middle ? 8 : 4} />
          ) : (
            <>
              <circle r="10.5" />
              <text y="4.5">{count}</text>
            </>
          )}
        </svg>
      ))}
    </svg>
  );
}
