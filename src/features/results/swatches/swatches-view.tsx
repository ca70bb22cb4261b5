import { toolText } from "@/engine/reporting";
import { rowsNoun } from "@/engine/shaping";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { BarStrip } from "@/ui/bar-strip";
import { DotStrip } from "@/ui/dot-strip";
import { EmptyState } from "@/ui/empty-state";
import { gaugeNumber, gaugeWidth } from "@/ui/format-gauge";
import type { PageOfList } from "@/ui/page-number";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { DotShape, type DotMark } from "@/ui/strip-dots";
import type { StripFrame } from "@/ui/value-strip";
import { entryErrorName } from "../mistakes/entry-error-copy";
import { countsHere, type FabricSwatches, type StatedGauge, type SwatchRow } from "./swatch-view";
import {
  countedWord,
  countsForWords,
  gaugeAdvice,
  gaugeVerdict,
  growthWords,
  otherToolWords,
  spreadWords,
  acceptedCopy,
  withoutWords,
} from "./swatch-copy";
import { SwatchTable, type ListedSwatch } from "./swatch-table";

interface SwatchesViewProps {
  readonly callId: string;
  readonly fabrics: readonly FabricSwatches[];
  readonly craft: PatternDocument["craft"];
  readonly unit: LengthUnit;
  /** Swatches are drawn and named one by one. */
  readonly areNamed: boolean;
  /** The testers whose swatches are listed. */
  readonly list: PageOfList;
}

/** Every stated gauge compared with the testers' swatches. */
export function SwatchesView({ callId, fabrics, craft, unit, areNamed, list }: SwatchesViewProps) {
  if (fabrics.every(({ swatches }) => swatches === 0))
    return (
      <EmptyState title="No swatches yet">
        <p>Once testers send swatches, this page shows whether they work to the pattern’s gauge.</p>
      </EmptyState>
    );
  return (
    <>
      <div className="mb-8 flex flex-wrap items-end justify-between gap-x-8 gap-y-3">
        {areNamed ? <Legend /> : <BarLegend />}
        <a href={`/calls/${callId}/swatches.csv`} className="text-link text-sm">
          Download swatches (CSV)
        </a>
      </div>
      {fabrics.map((swatches) => (
        <FabricSection key={swatches.fabric.id} {...{ swatches, craft, unit, areNamed }} />
      ))}
      <Paging
        label="Pages of swatches"
        page={list.page}
        pages={list.pages}
        hrefOf={(page) => `/calls/${callId}/swatches?page=${page}`}
      />
    </>
  );
}

const KEYS: readonly { readonly mark: DotMark; readonly says: string }[] = [
  { mark: "full", says: "washed swatch" },
  { mark: "hollow", says: "not washed" },
  { mark: "square", says: "taken on the garment" },
  { mark: "cross", says: "not used here" },
];

function Legend() {
  return (
    <div className="max-w-3xl text-sm text-soft">
      <p>
        Each dot is a tester’s swatch; point at it, or move to it with the Tab key, to see whose. About two in three
        testers work within the band. A few extreme swatches hardly affect the average.
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

function BarLegend() {
  return (
    <p className="max-w-3xl text-sm text-soft">
      The bars show how many swatches there are of each gauge; the outermost bars include everything beyond. About two
      in three testers work within the band. A few extreme swatches hardly affect the average.
    </p>
  );
}

interface FabricSectionProps extends Omit<SwatchesViewProps, "fabrics" | "callId" | "list"> {
  readonly swatches: FabricSwatches;
}

function FabricSection({ swatches, craft, unit, areNamed }: FabricSectionProps) {
  const { fabric, gauges, rows } = swatches;
  const without = withoutWords(swatches);
  const advice = gaugeAdvice(swatches, { craft, unit });
  const tools = otherToolWords(swatches, craft);
  const growth = growthWords(swatches);
  const stated = gauges.map((gauge) => `${gaugeNumber(gauge.stated)} ${countedWord(gauge, swatches)}`).join(" and ");
  return (
    <Section
      title={fabric.label}
      intro={`The pattern states ${stated} to ${gaugeWidth(unit).words}, washed, with ${toolText(craft, fabric.toolMm)}.`}
    >
      {advice === null ? null : (
        <p className="numbers mb-5 max-w-4xl border-l-4 border-thread pl-4 font-serif text-lg leading-snug">{advice}</p>
      )}
      <div className="mb-5 grid gap-4 lg:grid-cols-2">
        {gauges.map((gauge) => (
          <Strip key={gauge.direction} {...{ gauge, swatches, unit, areNamed }} />
        ))}
      </div>
      {tools === null ? null : <p className="mb-3 max-w-3xl text-soft">{tools}</p>}
      {growth === null ? null : <p className="numbers mb-3 max-w-3xl text-soft">{growth}</p>}
      {without === null ? null : <p className="mb-3 max-w-3xl text-soft wrap-anywhere">{without}</p>}
      {rows.length === 0 ? null : (
        <SwatchTable
          label={`Swatches of ${fabric.label}`}
          heads={heads(swatches, { craft, unit })}
          swatches={rows.map((row) => listed(row, craft))}
        />
      )}
    </Section>
  );
}

function heads({ fabric }: FabricSwatches, { craft, unit }: Pick<SwatchesViewProps, "craft" | "unit">) {
  const { words } = gaugeWidth(unit);
  const rows = rowsNoun(fabric) === "rounds" ? "Rounds" : "Rows";
  const tool = craft === "crochet" ? "Hook" : "Needles";
  return { stitches: `Stitches to ${words}`, rows: `${rows} to ${words}`, tool: `${tool}, mm` };
}

function listed(row: SwatchRow, craft: SwatchesViewProps["craft"]): ListedSwatch {
  const slip = row.suspect?.slip ? `; looks like ${entryErrorName(row.suspect.slip)}` : "";
  return {
    ...{
      tester: row.name,
      size: row.size,
      taken: acceptedCopy(row),
      countsFor: `${countsForWords(row, craft)}${slip}`,
    },
    ...{ stitches: row.stitches.toFixed(1), rows: row.rows.toFixed(1), toolMm: Number(row.toolMm.toFixed(2)) },
  };
}

interface StripProps {
  readonly gauge: StatedGauge;
  readonly swatches: FabricSwatches;
  readonly unit: LengthUnit;
  readonly areNamed: boolean;
}

function Strip({ gauge, swatches, unit, areNamed }: StripProps) {
  const counted = countedWord(gauge, swatches);
  const verdict = gaugeVerdict(gauge, swatches, unit);
  const spread = spreadWords(gauge);
  const width = gaugeWidth(unit).words;
  const frame = stripFrame(gauge, {
    title: `${swatches.fabric.label}, ${counted} to ${width}`,
    description: `${verdict} ${spread ?? ""}`,
  });
  return (
    <Sheet className="flex min-w-0 flex-col">
      <h3 className="mb-1">
        {counted.charAt(0).toUpperCase() + counted.slice(1)} to {width}
      </h3>
      <p className="numbers mb-auto pb-4 text-soft">
        <span className={gauge.verdict === "as stated" ? "text-ink" : "font-semibold text-ink"}>{verdict}</span>{" "}
        {spread}
      </p>
      {areNamed ? (
        <Dots {...{ frame, swatches }} direction={gauge.direction} />
      ) : (
        <BarStrip {...frame} bars={gauge.bars} />
      )}
    </Sheet>
  );
}

function stripFrame({ stated, mean, sd }: StatedGauge, words: Pick<StripFrame, "title" | "description">): StripFrame {
  const middle = mean === null ? null : { value: mean, low: mean - (sd ?? 0), high: mean + (sd ?? 0) };
  return {
    ...words,
    reference: { value: stated, label: `the pattern says ${gaugeNumber(stated)}` },
    middle: middle && { ...middle, label: `your testers ${middle.value.toFixed(1)}` },
    format: (value) => String(Number(value.toFixed(1))),
  };
}

interface DotsProps {
  readonly frame: StripFrame;
  readonly swatches: FabricSwatches;
  readonly direction: StatedGauge["direction"];
}

function Dots({ frame, swatches, direction }: DotsProps) {
  const dots = swatches.rows
    .filter(({ use }) => use !== "replaced")
    .map((row, index) => ({
      key: `${row.tester} ${index}`,
      label: row.name,
      value: row[direction],
      mark: markOf(row),
    }));
  return dots.length === 0 ? null : <DotStrip {...frame} dots={dots} />;
}

function markOf(row: SwatchRow): DotMark {
  if (!countsHere(row)) return "cross";
  if (row.onGarment) return "square";
  return row.washed ? "full" : "hollow";
}
