import { stripScale, ValueStrip, type StripFrame } from "./value-strip";

interface BarStripProps extends StripFrame {
  /** Bars of equal width from the least value on, and how many values each holds. */
  readonly bars: { readonly from: number; readonly width: number; readonly counts: readonly number[] };
}

const TALLEST = 110;

/** Many values on a line as bars, against a reference and about their middle. */
export function BarStrip({ bars, ...frame }: BarStripProps) {
  const { from, width, counts } = bars;
  const filled = counts.flatMap((count, index) => (count === 0 ? [] : [{ count, low: from + index * width }]));
  const scale = stripScale(
    filled.flatMap(({ low }) => [low, low + width]),
    frame,
  );
  const most = Math.max(1, ...counts);
  return (
    <ValueStrip {...frame} scale={scale} height={TALLEST + 6}>
      {(base) =>
        filled.map(({ count, low }) => {
          const height = (count / most) * TALLEST;
          return (
            <rect
              key={low}
              x={`${scale(low)}%`}
              width={`${scale(low + width) - scale(low)}%`}
              y={base - height}
              height={height}
              className="fill-ink/70 stroke-sheet"
            >
              <title>{`${frame.format(low)} to ${frame.format(low + width)}: ${count}`}</title>
            </rect>
          );
        })
      }
    </ValueStrip>
  );
}
