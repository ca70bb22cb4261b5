import { statedGauge, type Fabric } from "@/engine/pattern";
import { FOUR_INCHES_CM, GAUGE_WIDTH_CM } from "@/engine/units";
import { gaugeNumber } from "@/ui/format-gauge";
import { Sheet } from "@/ui/sheet";
import { factorWords } from "../pattern-copy";

const WIDTHS = [
  { label: "10 cm", cm: GAUGE_WIDTH_CM },
  { label: "4 in", cm: FOUR_INCHES_CM },
] as const;

/** Each fabric with its gauge over 10 cm and over 4 in, both from the same unrounded number. */
export function FabricCards({ fabrics }: { readonly fabrics: readonly Fabric[] }) {
  return (
    <ul className="grid gap-5 sm:grid-cols-2 lg:grid-cols-3">
      {fabrics.map((fabric) => (
        <li key={fabric.id}>
          <FabricCard fabric={fabric} />
        </li>
      ))}
    </ul>
  );
}

function FabricCard({ fabric }: { readonly fabric: Fabric }) {
  const { stitchesPerCm, rowsPerCm } = statedGauge(fabric);
  const behaviour = behaviourWords(fabric);
  return (
    <Sheet className="h-full">
      <h3 className="mb-1">{fabric.label}</h3>
      <p className="text-soft">
        {gaugeNumber(fabric.toolMm)} mm{fabric.worked ? `, worked ${WORKED[fabric.worked]}` : ""}
      </p>
      <dl className="numbers mt-3 grid grid-cols-[auto_1fr] gap-x-4 gap-y-1">
        {WIDTHS.map(({ label, cm }) => (
          <div key={label} className="contents">
            <dt className="text-soft">over {label}</dt>
            <dd>
              {gaugeNumber(stitchesPerCm * cm)} stitches, {gaugeNumber(rowsPerCm * cm)} rows
            </dd>
          </div>
        ))}
      </dl>
      {behaviour.length > 0 ? <p className="mt-3 text-sm text-soft">{behaviour.join(" ")}</p> : null}
    </Sheet>
  );
}

const WORKED: Readonly<Record<NonNullable<Fabric["worked"]>, string>> = {
  flat: "flat",
  round: "in the round",
  "turned rounds": "in joined turned rounds",
};

function behaviourWords({ settles, wornStretch }: Fabric): string[] {
  const both = (factors: Fabric["settles"]) =>
    [factorWords(factors?.across ?? 1, "stitches"), factorWords(factors?.along ?? 1, "rows")]
      .filter((words) => words !== null)
      .join(" and ");
  const settled = both(settles);
  const worn = both(wornStretch);
  return [
    ...(settled === "" ? [] : [`The garment comes out ${settled} than the swatch.`]),
    ...(worn === "" ? [] : [`When worn, it stretches ${worn}.`]),
  ];
}
