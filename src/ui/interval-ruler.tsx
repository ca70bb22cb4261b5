import { scaleLinear } from "d3-scale";

/** How sure the mark is drawn: full, hollow, or faint where it is only suggested. */
export type RulerMark = "strong" | "full" | "hollow" | "faint";

const SCALE_ID = "interval-ruler-scale";
const MARGIN = 6;
const MIDDLE = 11;

/** Place of a value on a ruler that reaches `reach` to either side of zero, in percent of its width. */
function place(reach: number) {
  return scaleLinear()
    .domain([-reach, reach])
    .range([MARGIN, 100 - MARGIN])
    .clamp(true);
}

/** What every ruler of a page shares: the band from −1 to 1, the base line and a tick at each whole number. */
export function IntervalRulerScale({ reach }: { readonly reach: number }) {
  const at = place(reach);
  const ticks = Array.from({ length: 2 * reach + 1 }, (_, index) => index - reach);
  return (
    <svg width="0" height="0" className="absolute" aria-hidden="true">
      <symbol id={SCALE_ID} overflow="visible">
        <rect x={`${at(-1)}%`} width={`${at(1) - at(-1)}%`} y="1" height="20" rx="2" className="fill-band" />
        <line x1={`${MARGIN}%`} x2={`${100 - MARGIN}%`} y1="21.5" y2="21.5" className="stroke-line-strong" />
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
  readonly reach: number;
  /** In the unit of the band's half-width; none where nothing is known. */
  readonly estimate?: { readonly value: number; readonly low: number; readonly high: number };
  readonly mark: RulerMark;
}

/** A small ruler: the band, an estimate as a dot and its interval as a line, with an arrow where it goes on. */
export function IntervalRuler({ reach, estimate, mark }: IntervalRulerProps) {
  return (
    <svg width="100%" height="23" aria-hidden="true" className="block overflow-visible">
      <use href={`#${SCALE_ID}`} width="100%" height="100%" />
      {estimate ? <Estimate reach={reach} estimate={estimate} mark={mark} /> : null}
    </svg>
  );
}

function Estimate({ reach, estimate, mark }: Required<IntervalRulerProps>) {
  const at = place(reach);
  const tone = mark === "strong" ? "thread" : mark === "faint" ? "line-strong" : "ink";
  const stroke = { thread: "stroke-thread", ink: "stroke-ink", "line-strong": "stroke-line-strong" }[tone];
  return (
    <>
      <line
        x1={`${at(estimate.low)}%`}
        x2={`${at(estimate.high)}%`}
        y1={MIDDLE}
        y2={MIDDLE}
        strokeWidth="2"
        strokeDasharray={mark === "faint" ? "2 2" : undefined}
        className={stroke}
      />
      {estimate.low < -reach ? <Arrow x={at(-reach)} way={-1} stroke={stroke} /> : null}
      {estimate.high > reach ? <Arrow x={at(reach)} way={1} stroke={stroke} /> : null}
      <circle
        cx={`${at(estimate.value)}%`}
        cy={MIDDLE}
        r={mark === "strong" ? 5.5 : 4.5}
        strokeWidth="2"
        className={`${stroke} ${mark === "strong" ? "fill-thread" : mark === "full" ? "fill-ink" : "fill-sheet"}`}
      />
    </>
  );
}

function Arrow({ x, way, stroke }: { readonly x: number; readonly way: 1 | -1; readonly stroke: string }) {
  return (
    <svg x={`${x}%`} y={MIDDLE} overflow="visible">
      <path d={`M${-3 * way} -4L${2 * way} 0L${-3 * way} 4`} fill="none" strokeWidth="2" className={stroke} />
    </svg>
  );
}
