interface Example {
  readonly size: string;
  readonly gapCm: number;
  readonly lowCm: number;
  readonly highCm: number;
  readonly says: string;
}

/** An invented row: one measurement in five sizes. */
const ROW: readonly Example[] = [
  { size: "S", gapCm: 0.2, lowCm: -0.4, highCm: 0.8, says: "as planned" },
  { size: "M", gapCm: 0.1, lowCm: -0.6, highCm: 0.8, says: "as planned" },
  { size: "L", gapCm: 0.9, lowCm: -0.5, highCm: 2.3, says: "not enough data: 2 more testers in L" },
  { size: "2X", gapCm: 1.7, lowCm: 0.6, highCm: 2.8, says: "probably too wide" },
  { size: "4X", gapCm: 2.6, lowCm: 1.7, highCm: 3.5, says: "2.6 cm too wide" },
];
const TOLERANCE_CM = 1.5;
const REACH_CM = 4;
const WIDTH = 160;
const MIDDLE = 24;

/** An example of the Differences page: a small ruler for each size, with invented numbers. */
export function RulerRowPicture() {
  return (
    <figure className="mb-12 rounded-sheet border border-line bg-sheet p-5 shadow-sheet sm:p-7">
      <p className="mb-4 font-semibold">B · Upper arm, gauge taken into account</p>
      <ul className="grid gap-x-6 gap-y-5 sm:grid-cols-3 lg:grid-cols-5">
        {ROW.map((example) => (
          <li
            key={example.size}
            className="max-sm:grid max-sm:grid-cols-[2.5rem_1fr] max-sm:items-center max-sm:gap-x-3"
          >
            <span className="font-semibold max-sm:row-span-2">{example.size}</span>
            <Ruler example={example} />
            <span className="block text-sm">{example.says}</span>
          </li>
        ))}
      </ul>
      <figcaption className="mt-5 border-t border-line pt-3 text-sm text-soft">
        Example with invented numbers. The band is your tolerance, the dot the estimate from testers’ garments, the line
        how certain it is.
      </figcaption>
    </figure>
  );
}

function Ruler({ example: { gapCm, lowCm, highCm } }: { readonly example: Example }) {
  const at = (cm: number) => WIDTH / 2 + (cm / REACH_CM) * (WIDTH / 2);
  const isOff = Math.abs(gapCm) > TOLERANCE_CM;
  return (
    <svg viewBox={`0 0 ${WIDTH} 48`} className="my-1 block h-12 w-full max-w-56" aria-hidden="true">
      <rect
        x={at(-TOLERANCE_CM)}
        width={at(TOLERANCE_CM) - at(-TOLERANCE_CM)}
        y="8"
        height="32"
        className="fill-band"
      />
      <path d={`M0 ${MIDDLE}H${WIDTH}`} className="stroke-line-strong" />
      <path d={`M${at(0)} 6V42`} className="stroke-ink" strokeWidth="1.5" />
      <path
        d={`M${at(lowCm)} ${MIDDLE}H${at(highCm)}`}
        className={isOff ? "stroke-thread" : "stroke-ink"}
        strokeWidth="3"
      />
      <circle cx={at(gapCm)} cy={MIDDLE} r="6" className={isOff ? "fill-thread" : "fill-ink"} />
    </svg>
  );
}
