/** How sure the mark is drawn: full, hollow, or faint where it is only suggested. */
export type RulerMark = "strong" | "full" | "hollow" | "faint";

/** An estimate on a ruler: percent of its width, beyond its ends where the interval goes on. */
export interface RulerEstimate {
  readonly index: number;
  readonly from: number;
  readonly to: number;
}

const SCALE_ID = "interval-ruler-scale";
const MARGIN = 6;
const END = 100 - MARGIN;
const MIDDLE = 11;

/** Of the dot: what is as planned stands back. */
const RADIUS: Readonly<Record<RulerMark, number>> = { strong: 6.5, full: 3, hollow: 4.5, faint: 3 };

/** Place of a value on a ruler that reaches `reach` to either side of zero, percent of its width to a tenth. */
function place(value: number, reach: number): number {
  return Math.round(10 * (50 + (value / reach) * (50 - MARGIN))) / 10;
}

/** Puts an estimate on a ruler. @param estimate in the unit of `reach`. */
export function rulerEstimate(
  { value, low, high }: { readonly value: number; readonly low: number; readonly high: number },
  reach: number,
): RulerEstimate {
  return { index: place(value, reach), from: place(low, reach), to: place(high, reach) };
}

function clamped(percent: number): string {
  return `${Math.min(END, Math.max(MARGIN, percent))}%`;
}

/** What every ruler of a page shares: the band from −1 to 1, the base line and a tick at each whole number. */
export function IntervalRulerScale({ reach }: { readonly reach: number }) {
  const at = (value: number) => place(value, reach);
  const ticks = Array.from({ length: 2 * reach + 1 }, (_, index) => index - reach);
  return (
    <svg width="0" height="0" className="absolute" aria-hidden="true">
      <symbol id={SCALE_ID} overflow="visible">
        <rect x={`${at(-1)}%`} width={`${at(1) - at(-1)}%`} y="1" height="20" rx="2" className="fill-band" />
        <line x1={`${MARGIN}%`} x2={`${END}%`} y1="21.5" y2="21.5" className="stroke-line-strong" />
        {ticks.map((tick) => (
          <line
            key={tick}
            x1={`${at(tick)}%`}
            x2={`${at(tick)}%`}
            y1={tick === 0 ? 2 : 18}
            y2="21.5"
            className="stroke-line-strong"
            strokeDasharray={tick === 0 ? "1 2" : undefined}
          />
        ))}
      </symbol>
    </svg>
  );
}

interface IntervalRulerProps {
  /** None where nothing is known. */
  readonly estimate?: RulerEstimate | undefined;
  readonly mark: RulerMark;
}

/** A small ruler: the band, an estimate as a dot and its interval as a line, with an arrow where it goes on. */
export function IntervalRuler({ estimate, mark }: IntervalRulerProps) {
  return (
    <svg aria-hidden="true" className={`ruler ${mark}`}>
      <use href={`#${SCALE_ID}`} width="100%" height="100%" />
      {estimate ? (
        <>
          <line x1={clamped(estimate.from)} x2={clamped(estimate.to)} y1={MIDDLE} y2={MIDDLE} />
          {estimate.from < MARGIN ? <Arrow x={MARGIN} way={-1} /> : null}
          {estimate.to > END ? <Arrow x={END} way={1} /> : null}
          <circle cx={clamped(estimate.index)} cy={MIDDLE} r={RADIUS[mark]} />
        </>
      ) : null}
    </svg>
  );
}

function Arrow({ x, way }: { readonly x: number; readonly way: 1 | -1 }) {
  return (
    <svg x={`${x}%`} y={MIDDLE} overflow="visible">
      <path d={`M${-3 * way} -4L${2 * way} 0L${-3 * way} 4`} />
    </svg>
  );
}
