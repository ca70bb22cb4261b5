import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { DotShape, DotStrip, type DotMark } from "@/ui/dot-strip";
import { EmptyState } from "@/ui/empty-state";
import { gaugeNumber, gaugeWidth } from "@/ui/format-gauge";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { rowsWord, toolWords } from "../craft-words";
import { countsHere, type FabricSwatches, type StatedGauge, type SwatchRow } from "../swatch-view";
import { countedWord, gaugeAdvice, gaugeVerdict, otherToolWords, spreadWords } from "../swatch-words";
import { SwatchTable } from "./swatch-table";

interface SwatchesViewProps {
  readonly callId: string;
  readonly fabrics: readonly FabricSwatches[];
  readonly craft: PatternDocument["craft"];
  readonly unit: LengthUnit;
}

/** Every stated gauge against the testers' swatches. */
export function SwatchesView({ callId, fabrics, craft, unit }: SwatchesViewProps) {
  if (fabrics.every(({ rows }) => rows.length === 0))
    return (
      <EmptyState title="No swatches yet">
        <p>
          As soon as testers’ swatches are here, this page shows whether they work to the gauge that the pattern states.
        </p>
      </EmptyState>
    );
  return (
    <>
      <div className="mb-8 flex flex-wrap items-end justify-between gap-x-8 gap-y-3">
        <Legend />
        <a href={`/calls/${callId}/swatches.csv`} className="text-link text-sm">
          Swatches as a CSV file
        </a>
      </div>
      {fabrics.map((swatches) => (
        <FabricSection key={swatches.fabric.id} {...{ swatches, craft, unit }} />
      ))}
    </>
  );
}

const KEYS: readonly { readonly mark: DotMark; readonly says: string }[] = [
  { mark: "full", says: "washed swatch" },
  { mark: "hollow", says: "not washed" },
  { mark: "square", says: "taken on the garment" },
  { mark: "cross", says: "does not count here" },
];

function Legend() {
  return (
    <div className="max-w-3xl text-sm text-soft">
      <p>
        Each dot is a tester’s swatch; point at it, or step to it with the Tab key, for her name. The band is where
        about two in three of them work. A few swatches far from the others hardly move their middle.
      </p>
      <ul className="mt-2 flex flex-wrap gap-x-5 gap-y-1">
        {KEYS.map(({ mark, says }) => (
          <li key={mark} className="flex items-center gap-2">
            <svg width="12" height="12" viewBox="-6 -6 12 12" aria-hidden="true">
              <DotShape mark={mark} />
            </svg>
            {says}
          </li>
        ))}
      </ul>
    </div>
  );
}

interface FabricSectionProps extends Omit<SwatchesViewProps, "fabrics" | "callId"> {
  readonly swatches: FabricSwatches;
}

function FabricSection({ swatches, craft, unit }: FabricSectionProps) {
  const { fabric, gauges, rows, without } = swatches;
  const advice = gaugeAdvice(swatches, { craft, unit });
  const tools = otherToolWords(swatches, craft);
  const stated = gauges.map((gauge) => `${gaugeNumber(gauge.stated)} ${countedWord(gauge, swatches)}`).join(" and ");
  return (
    <Section
      title={fabric.label}
      intro={`The pattern states ${stated} to ${gaugeWidth(unit).words}, washed, with ${toolWords(craft, fabric.toolMm)}.`}
    >
      {advice === null ? null : (
        <p className="numbers mb-5 max-w-4xl border-l-4 border-thread pl-4 font-serif text-lg leading-snug">{advice}</p>
      )}
      <div className="mb-5 grid gap-4 lg:grid-cols-2">
        {gauges.map((gauge) => (
          <Strip key={gauge.direction} {...{ gauge, swatches, unit }} />
        ))}
      </div>
      {tools === null ? null : <p className="mb-3 max-w-3xl text-soft">{tools}</p>}
      {without.length === 0 ? null : (
        <p className="mb-3 max-w-3xl text-soft wrap-anywhere">
          No swatch that counts from {without.join(", ")}: reckoned with the pattern’s gauge, which is taken to be less
          sure.
        </p>
      )}
      {rows.length === 0 ? null : (
        <SwatchTable {...{ rows, craft, unit }} rowsWord={rowsWord(fabric)} label={`Swatches of ${fabric.label}`} />
      )}
    </Section>
  );
}

interface StripProps {
  readonly gauge: StatedGauge;
  readonly swatches: FabricSwatches;
  readonly unit: LengthUnit;
}

function Strip({ gauge, swatches, unit }: StripProps) {
  const { direction, stated, mean, sd } = gauge;
  const counted = countedWord(gauge, swatches);
  const verdict = gaugeVerdict(gauge, swatches, unit);
  const spread = spreadWords(gauge);
  const width = gaugeWidth(unit).words;
  const dots = swatches.rows
    .filter(({ use }) => use !== "replaced")
    .map((row, at) => ({ key: `${row.tester} ${at}`, label: row.name, value: row[direction], mark: markOf(row) }));
  return (
    <Sheet className="flex min-w-0 flex-col">
      <h3 className="mb-1">
        {counted.charAt(0).toUpperCase() + counted.slice(1)} to {width}
      </h3>
      <p className="numbers mb-auto pb-4 text-soft">
        <span className={gauge.verdict === "as stated" ? "text-ink" : "font-semibold text-ink"}>{verdict}</span>{" "}
        {spread}
      </p>
      {dots.length === 0 ? null : (
        <DotStrip
          title={`${swatches.fabric.label}, ${counted} to ${width}`}
          description={`${verdict} ${spread ?? ""}`}
          dots={dots}
          reference={{ value: stated, label: `the pattern says ${gaugeNumber(stated)}` }}
          middle={
            mean === null
              ? null
              : { value: mean, low: mean - (sd ?? 0), high: mean + (sd ?? 0), label: `your testers ${mean.toFixed(1)}` }
          }
          format={(value) => String(Number(value.toFixed(1)))}
        />
      )}
    </Sheet>
  );
}

function markOf(row: SwatchRow): DotMark {
  if (!countsHere(row)) return "cross";
  if (row.onGarment) return "square";
  return row.washed ? "full" : "hollow";
}
