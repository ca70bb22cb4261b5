"use client";

import { ownValue, type Measurement, type PatternDocument, type Size } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import { easeLabel } from "@/engine/trade-tables";
import type { LengthUnit } from "@/engine/units";
import { formatChangeNumber } from "@/ui/format-length";
import { MatrixTable } from "@/ui/matrix-table";
import { Section } from "@/ui/section";
import { bodyLabel } from "../pattern-copy";

/** Actual ease: each finished measurement minus its body measurement. */
export function EaseTable({ pattern, unit }: { readonly pattern: PatternDocument; readonly unit: LengthUnit }) {
  const rows = finishedMeasurements(pattern).flatMap(({ measurement, sizes }) => {
    const body = bodyOf(measurement);
    if (body === null) return [];
    return [
      {
        key: measurement.id,
        head: (
          <>
            <span className="font-semibold">{measurement.letter}</span> {measurement.label}
            <span className="block text-sm text-soft">over {bodyWords(pattern, body)}</span>
          </>
        ),
        cells: sizes.map(({ size, designCm }) => {
          const worn = pattern.sizes.find(({ id }) => id === size);
          const easeCm = worn === undefined || designCm === null ? null : easeOf(designCm, worn, body);
          return (
            <span key={size} className="numbers whitespace-nowrap">
              {easeCm === null ? "–" : formatChangeNumber(easeCm, unit)}
              {easeCm !== null && isAroundBust(pattern, measurement) ? (
                <span className="block whitespace-normal text-sm text-soft">{easeLabel(easeCm)}</span>
              ) : null}
            </span>
          );
        }),
      },
    ];
  });
  if (rows.length === 0) return null;
  return (
    <Section
      title="Actual ease"
      intro="How much each finished measurement differs from its body measurement, after rounding to whole stitches and rows."
    >
      <MatrixTable
        label="Actual ease"
        corner={`Over the body (+) or under it (−), ${unit}`}
        columns={pattern.sizes.map(({ id, label }) => ({ key: id, label }))}
        rows={rows}
        isLive
      />
      {pattern.measurements.some((measurement) => isAroundBust(pattern, measurement)) ? (
        <p className="mt-2 text-sm text-soft">These are usual words for ease. Check them against your own.</p>
      ) : null}
    </Section>
  );
}

/** The chart's words are for ease around the whole body measurement that orders the sizes. */
function isAroundBust({ sizeBy }: PatternDocument, measurement: Measurement): boolean {
  const body = bodyOf(measurement);
  return measurement.girth === true && body !== null && body.body === sizeBy && body.share === 1;
}

interface BodyOf {
  readonly body: string;
  readonly share: number;
}

function bodyOf({ target }: Measurement): BodyOf | null {
  return target === undefined || "cm" in target ? null : { body: target.body, share: target.share ?? 1 };
}

function bodyWords(pattern: PatternDocument, { body, share }: BodyOf): string {
  const label = bodyLabel(pattern, body);
  return share === 1 ? label : `${Number((share * 100).toFixed(1))} % of ${label}`;
}

function easeOf(designCm: number, size: Size, { body, share }: BodyOf): number | null {
  const bodyCm = ownValue(size.body, body);
  return bodyCm === undefined ? null : designCm - share * bodyCm;
}
