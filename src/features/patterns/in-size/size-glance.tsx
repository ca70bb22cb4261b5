import { statedGauge, type Fabric, type PatternDocument, type Size } from "@/engine/pattern";
import { rowNoun } from "@/engine/shaping";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { gaugeNumber, gaugeWidth } from "@/ui/format-gauge";
import { formatYarnNumber, yarnUnit } from "@/ui/format-yarn-length";
import { bodyLabel } from "../pattern-copy";

interface SizeGlanceProps {
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly unit: LengthUnit;
}

/** What people look up first: the body measurements of a size, all sizes, gauge and needle or hook of each fabric, the yarns. */
export function SizeGlance({ pattern, size, unit }: SizeGlanceProps) {
  const { fabrics, sizes, yarns, craft } = pattern;
  const body = Object.entries(size.body).map(([id, cm]) => `${bodyLabel(pattern, id)} ${formatLength(cm, unit)}`);
  return (
    <dl className="numbers grid gap-x-6 wrap-anywhere sm:grid-cols-[9rem_minmax(0,1fr)] sm:gap-y-3 [&_dd]:max-sm:mb-3 [&_dt]:text-soft [&_dt]:max-sm:text-sm">
      <dt>Your size</dt>
      <dd>
        <b className="font-semibold">{size.label}</b>
        {body.length > 0 ? `, made for ${body.join(", ")}` : null}
      </dd>
      <dt>All sizes</dt>
      <dd>{sizes.map(({ label }) => label).join(" · ")}</dd>
      {fabrics.map((fabric) => (
        <FabricAtAGlance key={fabric.id} {...{ fabric, craft, unit }} />
      ))}
      {yarns.map(({ id, label, colour, metresPerBall, gramsPerBall }) => (
        <div key={id} className="contents">
          <dt>Yarn</dt>
          <dd>
            {label}
            {colour ? `, ${colour}` : null}
            <span className="block text-sm text-soft">
              {formatYarnNumber(metresPerBall, yarnUnit(unit))} {yarnUnit(unit)} in a ball of{" "}
              {gaugeNumber(gramsPerBall)} g
            </span>
          </dd>
        </div>
      ))}
    </dl>
  );
}

interface FabricProps {
  readonly fabric: Fabric;
  readonly craft: PatternDocument["craft"];
  readonly unit: LengthUnit;
}

function FabricAtAGlance({ fabric, craft, unit }: FabricProps) {
  const { stitchesPerCm, rowsPerCm } = statedGauge(fabric);
  const { cm, words } = gaugeWidth(unit);
  return (
    <>
      <dt>Gauge, {fabric.label}</dt>
      <dd>
        {gaugeNumber(stitchesPerCm * cm)} stitches and {gaugeNumber(rowsPerCm * cm)} {rowNoun(fabric)}s to {words}
        <span className="block text-sm text-soft">
          washed, with {craft === "crochet" ? "a" : "needles of"} {gaugeNumber(fabric.toolMm)} mm
          {craft === "crochet" ? " hook" : ""}
        </span>
      </dd>
    </>
  );
}
