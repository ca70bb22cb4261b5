"use client";

import { isEnd, type StepKind } from "./shown-steps";
import type { DrawnStep, DrawnSteps } from "./step-scale";

const WORDS: Readonly<Record<StepKind, string>> = {
  target: "Target",
  design: "As planned",
  rounding: "Whole counts",
  worked: "Different counts",
  gauge: "Own gauge",
  gap: "Difference",
  reading: "As measured",
};

const LANE_HEIGHT = 24;
const MIDDLE = LANE_HEIGHT / 2;

interface StepPictureProps extends DrawnSteps {
  readonly caption: string;
  readonly counted: boolean;
}

/** The steps from target to reading, as a picture and as a table. */
export function StepPicture({ rows, ticks, unit, caption, counted }: StepPictureProps) {
  return (
    <table className={`step-picture ${counted ? "counted" : ""}`}>
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
        {rows.map((row) => (
          <tr key={row.kind} className={row.kind}>
            <th scope="row">{WORDS[row.kind]}</th>
            <td>
              <Lane row={row} ticks={ticks} />
            </td>
            <td>{row.says}</td>
          </tr>
        ))}
        <tr aria-hidden="true" className="axis">
          <td />
          <td>
            <svg height="16">
              {ticks.map(({ index, says }) => (
                <text key={index} x={`${index}%`} y="12">
                  {says}
                </text>
              ))}
            </svg>
          </td>
          <td>{unit}</td>
        </tr>
      </tbody>
    </table>
  );
}

function Lane({ row: { kind, from, to }, ticks }: { readonly row: DrawnStep; readonly ticks: DrawnSteps["ticks"] }) {
  return (
    <svg height={LANE_HEIGHT} aria-hidden="true">
      {ticks.map(({ index }) => (
        <line key={index} x1={`${index}%`} x2={`${index}%`} y2="100%" />
      ))}
      {kind === "target" || kind === "design" ? null : (
        <line x1={`${from}%`} x2={`${from}%`} y2={MIDDLE} className="way" />
      )}
      {kind === "reading" ? null : <line x1={`${to}%`} x2={`${to}%`} y1={MIDDLE} y2="100%" className="way" />}
      {isEnd(kind) ? (
        <svg x={`${to}%`} y={MIDDLE} overflow="visible">
          <path d="M0 -6L6 0L0 6L-6 0Z" />
        </svg>
      ) : (
        <rect
          x={`${Math.min(from, to)}%`}
          width={`${Math.max(Math.round(10 * Math.abs(to - from)) / 10, 0.6)}%`}
          y={MIDDLE - 5}
          height="10"
        />
      )}
    </svg>
  );
}
