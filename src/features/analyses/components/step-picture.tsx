import { scaleLinear } from "d3-scale";
import { fromCm, toCm, type LengthUnit } from "@/engine/units";
import { formatChangeNumber, formatLengthNumber } from "@/ui/format-length";
import type { ShownStep, StepKind } from "../shown-steps";

const WORDS: Readonly<Record<StepKind, string>> = {
  target: "Target",
  design: "As designed",
  rounding: "Whole counts",
  worked: "Worked otherwise",
  gauge: "Her gauge explains",
  gap: "What it does not",
  reading: "Her measurement",
};

/** A common scale for all pictures of a panel. */
export interface StepScale {
  readonly at: (cm: number) => number;
  readonly ticksCm: readonly number[];
}

const LANE_HEIGHT = 24;

/** A scale from the least to the greatest of all steps, in percent of a picture's width. */
export function stepScale(steps: readonly ShownStep[], unit: LengthUnit, toleranceCm: number): StepScale {
  const ends = steps.flatMap(({ fromCm: from, toCm: to }) => [from, to]);
  const around = Math.max(toleranceCm, 0.5);
  const scale = scaleLinear()
    .domain([fromCm(Math.min(...ends) - around, unit), fromCm(Math.max(...ends) + around, unit)])
    .nice(4)
    .range([2, 98]);
  return { at: (cm) => scale(fromCm(cm, unit)), ticksCm: scale.ticks(4).map((tick) => toCm(tick, unit)) };
}

interface StepPictureProps {
  readonly steps: readonly ShownStep[];
  readonly scale: StepScale;
  readonly unit: LengthUnit;
  readonly caption: string;
  readonly counted: boolean;
}

/** The way from target to reading: a picture for the eye, and the same rows as a table for everybody. */
export function StepPicture({ steps, scale, unit, caption, counted }: StepPictureProps) {
  return (
    <table className="w-full table-fixed border-collapse text-[0.82rem] leading-tight">
      <caption className="sr-only">{caption}</caption>
      <colgroup>
        <col className="w-33" />
        <col />
        <col className="w-14" />
      </colgroup>
      <thead className="sr-only">
        <tr>
          <th scope="col">Step</th>
          <th scope="col">On the scale</th>
          <th scope="col">{unit}</th>
        </tr>
      </thead>
      <tbody>
        {steps.map((step) => (
          <tr key={step.kind} className={isEnd(step) || step.kind === "gap" ? "font-semibold" : "text-soft"}>
            <th scope="row" className="whitespace-nowrap py-0 pr-2 text-left [font-weight:inherit]">
              {WORDS[step.kind]}
            </th>
            <td className="p-0">
              <Lane step={step} scale={scale} counted={counted} />
            </td>
            <td
              className={`whitespace-nowrap py-0 pl-2 text-right ${step.kind === "gap" && counted ? "text-thread" : ""}`}
            >
              {isEnd(step) ? formatLengthNumber(step.cm, unit) : formatChangeNumber(step.cm, unit)}
            </td>
          </tr>
        ))}
        <tr aria-hidden="true" className="text-xs text-soft">
          <td />
          <td className="p-0">
            <Axis scale={scale} unit={unit} />
          </td>
          <td className="pl-2 text-right">{unit}</td>
        </tr>
      </tbody>
    </table>
  );
}

function isEnd({ kind }: ShownStep): boolean {
  return kind === "target" || kind === "design" || kind === "reading";
}

function Lane({
  step,
  scale,
  counted,
}: {
  readonly step: ShownStep;
  readonly scale: StepScale;
  readonly counted: boolean;
}) {
  const [from, to] = [scale.at(step.fromCm), scale.at(step.toCm)];
  const middle = LANE_HEIGHT / 2;
  const tone = step.kind === "gap" && counted ? "fill-thread" : step.kind === "gauge" ? "fill-ink" : "fill-line-strong";
  return (
    <svg width="100%" height={LANE_HEIGHT} aria-hidden="true" className="block overflow-visible">
      {scale.ticksCm.map((tick) => (
        <line key={tick} x1={`${scale.at(tick)}%`} x2={`${scale.at(tick)}%`} y1="0" y2="100%" className="stroke-line" />
      ))}
      {step.kind === "target" || step.kind === "design" ? null : (
        <line x1={`${from}%`} x2={`${from}%`} y1="0" y2={middle} className="stroke-line-strong" />
      )}
      {step.kind === "reading" ? null : (
        <line x1={`${to}%`} x2={`${to}%`} y1={middle} y2="100%" className="stroke-line-strong" />
      )}
      {isEnd(step) ? (
        <svg x={`${to}%`} y={middle} overflow="visible">
          <path d="M0 -6L6 0L0 6L-6 0Z" className="fill-ink" />
        </svg>
      ) : (
        <rect
          x={`${Math.min(from, to)}%`}
          width={`${Math.max(Math.abs(to - from), 0.6)}%`}
          y={middle - 5}
          height="10"
          className={tone}
        />
      )}
    </svg>
  );
}

function Axis({ scale, unit }: { readonly scale: StepScale; readonly unit: LengthUnit }) {
  return (
    <svg width="100%" height="16" className="block overflow-visible">
      {scale.ticksCm.map((tick, at) => (
        <text
          key={tick}
          x={`${scale.at(tick)}%`}
          y="12"
          textAnchor="middle"
          className={`numbers fill-soft text-[0.7rem] ${at % 2 === 1 ? "max-sm:hidden" : ""}`}
        >
          {formatLengthNumber(tick, unit).replace(/\.0$/, "")}
        </text>
      ))}
    </svg>
  );
}
