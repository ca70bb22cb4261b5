import { scaleLinear } from "d3-scale";
import type { GradingChoice } from "@/engine/grading";
import { isWithin } from "./solved-copy";

interface TradeOffPictureProps {
  readonly choices: readonly GradingChoice[];
  /** Index of the one that is looked at. */
  readonly chosen: number;
}

const SIZE = { width: 320, height: 96, edge: 7 } as const;

/** Every choice as a dot above its place on the slider: to the right more even, further up further from the targets; filled where all is within tolerance. */
export function TradeOffPicture({ choices, chosen }: TradeOffPictureProps) {
  const { width, height, edge } = SIZE;
  const deviations = choices.map(({ deviation }) => deviation);
  const across = scaleLinear([0, choices.length - 1], [edge, width - edge]);
  const up = scaleLinear([Math.min(...deviations), Math.max(...deviations)], [height - 2 * edge, edge]);
  const at = choices[chosen];
  return (
    <svg viewBox={`0 0 ${width} ${height}`} className="block w-full max-w-lg" aria-hidden="true">
      <line x1={edge} x2={width - edge} y1={height - 1} y2={height - 1} className="stroke-line-strong" />
      {choices.map((choice, index) => (
        <circle
          key={choice.unevenness}
          cx={across(index)}
          cy={up(choice.deviation)}
          r={2.5}
          className={isWithin(choice) ? "fill-ink stroke-ink" : "fill-sheet stroke-soft"}
        />
      ))}
      {at === undefined ? null : (
        <circle
          cx={across(chosen)}
          cy={up(at.deviation)}
          r={6}
          strokeWidth={2}
          className={isWithin(at) ? "fill-thread stroke-thread" : "fill-sheet stroke-thread"}
        />
      )}
    </svg>
  );
}
