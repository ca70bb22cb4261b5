"use client";

import type { DraftPattern, Typed } from "@/engine/editing";
import { statedGauge, type Fabric } from "@/engine/pattern";
import { rowsNoun } from "@/engine/shaping";
import { compareTool } from "@/engine/trade-tables";
import { FOUR_INCHES_CM, GAUGE_WIDTH_CM } from "@/engine/units";
import { gaugeNumber } from "@/ui/format-gauge";
import { useEditing } from "./editing";
import { ChoiceField, NumberField } from "./fields";

/** A fabric as it is being edited. */
export type DraftFabric = DraftPattern["fabrics"][number];

interface GaugeFieldsProps {
  readonly fabric: DraftFabric;
  readonly at: number;
  readonly onFabric: (next: DraftFabric, field: string | null) => void;
}

const WIDTHS = [
  { value: "10 cm", label: "10 cm", cm: GAUGE_WIDTH_CM },
  { value: "4 in", label: "4 in", cm: FOUR_INCHES_CM },
] as const;
const ANOTHER = { value: "another", label: "another width" };

/** Stitches and rows, over which width, and the same gauge over both usual widths. */
export function GaugeFields({ fabric, at, onFabric }: GaugeFieldsProps) {
  const { readable, unit } = useEditing("readable", "unit");
  const { gauge } = fabric;
  const { overCm } = gauge;
  const read = readable?.fabrics.find(({ id }) => id === fabric.id);
  const rows = rowsNoun(fabric);
  const width = widthOf(overCm);
  const chooseWidth = (value: string) => {
    const { overCm: _before, ...rest } = gauge;
    onFabric(
      { ...fabric, gauge: value === "10 cm" ? rest : { ...rest, overCm: value === "4 in" ? FOUR_INCHES_CM : "" } },
      null,
    );
  };
  return (
    <fieldset className="mt-5">
      <legend className="mb-1 font-semibold">Gauge</legend>
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <NumberField
          at={["fabrics", at, "gauge", "stitches"]}
          label="Stitches"
          value={gauge.stitches}
          onText={(stitches) => onFabric({ ...fabric, gauge: { ...gauge, stitches } }, "gauge.stitches")}
        />
        <NumberField
          at={["fabrics", at, "gauge", "rows"]}
          label={rows === "rows" ? "Rows" : "Rounds"}
          value={gauge.rows}
          onText={(typed) => onFabric({ ...fabric, gauge: { ...gauge, rows: typed } }, "gauge.rows")}
        />
        <div className="w-40">
          <ChoiceField
            at={["fabrics", at, "gauge", "over"]}
            label="over"
            value={width}
            choices={[...WIDTHS, ANOTHER]}
            onChoice={chooseWidth}
          />
        </div>
        {width === ANOTHER.value ? (
          <NumberField
            at={["fabrics", at, "gauge", "overCm"]}
            label="Width"
            kind="length"
            behind={unit}
            value={overCm}
            onText={(typed) => onFabric({ ...fabric, gauge: { ...gauge, overCm: typed } }, "gauge.overCm")}
          />
        ) : null}
      </div>
      <div aria-live="polite" className="numbers mt-2 text-sm text-soft">
        {read === undefined ? (
          "Enter a gauge to see it over 10 cm and 4 in."
        ) : (
          <>
            <BothWidths {...{ read, rows }} />
            <UsualTool fabric={read} />
          </>
        )}
      </div>
    </fieldset>
  );
}

function BothWidths({ read, rows }: { readonly read: Fabric; readonly rows: string }) {
  const { stitchesPerCm, rowsPerCm } = statedGauge(read);
  return WIDTHS.map(({ label, cm }) => (
    <p key={label}>
      {gaugeNumber(stitchesPerCm * cm)} stitches and {gaugeNumber(rowsPerCm * cm)} {rows} over {label}
    </p>
  ));
}

/** The usual needle or hook at such a gauge, as a suggestion. */
function UsualTool({ fabric }: { readonly fabric: Fabric }) {
  const { pattern } = useEditing("pattern");
  const { stitchesPerCm } = statedGauge(fabric);
  // The table counts over 4 in, which the trade writes as 10 cm.
  const stitchesOver10cm =
    widthOf(fabric.gauge.overCm) === "4 in" ? fabric.gauge.stitches : stitchesPerCm * GAUGE_WIDTH_CM;
  const compared = compareTool({ craft: pattern.craft, stitchesOver10cm, toolMm: fabric.toolMm });
  return compared === null ? null : <p className="mt-1 max-w-3xl">{compared.message}</p>;
}

/** A typed width stays "another", so that its field does not disappear while someone types `4 in`. */
function widthOf(overCm: Typed | undefined): string {
  if (overCm === undefined) return "10 cm";
  const usual = WIDTHS.find(({ cm }) => typeof overCm === "number" && Math.abs(cm - overCm) < 1e-9);
  return usual?.value ?? ANOTHER.value;
}
