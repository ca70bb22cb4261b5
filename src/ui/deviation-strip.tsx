/** Id of what every strip of a page shares. */
export const DEVIATION_SCALE = "deviation-strip-scale";
export const STRIP_MIDDLE = 19;
const HEIGHT = 30;

/** What one strip draws, in percent of its width. */
export interface Deviations {
  /** Places of values that need no name. */
  readonly usual: readonly number[];
  readonly standing: readonly StandingDeviation[];
}

interface StandingDeviation {
  readonly label: string;
  readonly index: number;
  readonly lane: number;
  readonly isStrong: boolean;
}

/** Values about zero in one line: the usual ones as plain dots in a band, the others named. */
export function DeviationStrip({ title, usual, standing }: Deviations & { readonly title: string }) {
  // A dot is a line of no length with round ends, so that many are one path and stay round however wide the strip is.
  const dots = usual.map((index) => `M${index} ${STRIP_MIDDLE}h0`).join("");
  return (
    <svg role="img" aria-label={title} className="deviation-strip">
      <use href={`#${DEVIATION_SCALE}`} width="100%" height="100%" />
      <svg width="100%" height={HEIGHT} viewBox={`0 0 100 ${HEIGHT}`} preserveAspectRatio="none">
        <path d={dots} vectorEffect="non-scaling-stroke" />
      </svg>
      {standing.map(({ label, index, lane, isStrong }) => (
        <svg
          key={`${label} ${index}`}
          x={`${index}%`}
          y={STRIP_MIDDLE}
          overflow="visible"
          className={isStrong ? "strong" : undefined}
        >
          <circle r={isStrong ? 5 : 4} />
          <text y={-8 - lane * 11}>{label}</text>
        </svg>
      ))}
    </svg>
  );
}
