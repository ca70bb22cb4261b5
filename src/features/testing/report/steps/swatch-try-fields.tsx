import { fieldOf, type SwatchPart } from "@/engine/reporting";
import { Sheet } from "@/ui/sheet";
import type { FilledReport } from "../filled-report";
import type { SwatchTry } from "./swatch-tries";
import { AlsoButton } from "./also-button";
import { BeforeBlocking } from "./before-blocking";
import { BlockingField } from "./blocking-field";
import { ChoiceField } from "./choice-field";
import { FieldPair, SharedQuestion } from "./field-pair";
import { HowCounted, ToolField } from "./swatch-fields";
import { ReportField } from "./report-field";
import { SwatchOutlookView } from "./swatch-outlook-view";

interface SwatchTryFieldsProps {
  readonly report: FilledReport;
  readonly one: SwatchTry;
  /** The keys of all swatches. */
  readonly keys: readonly string[];
  readonly canBeTakenOut: boolean;
}

/** One swatch: its fields, and what it would do. */
export function SwatchTryFields({ report, one, keys, canBeTakenOut }: SwatchTryFieldsProps) {
  const { key, number, outcome } = one;
  const heading = `try-${key}`;
  return (
    <section aria-labelledby={heading}>
      <Sheet>
        <div className="mb-4 flex flex-wrap items-baseline justify-between gap-x-4 gap-y-1">
          <h2 id={heading}>Swatch {number}</h2>
          <p className="text-sm font-semibold">{outcome?.counts ? "✓ This one counts" : null}</p>
        </div>
        <SwatchNumbers report={report} swatch={key} />
        {outcome === null ? null : <SwatchOutlookView outcome={outcome} context={report.context} />}
        {report.ended === null ? (
          <div className="mt-5 flex flex-wrap gap-x-4 gap-y-2">
            {outcome?.hasOthers && !outcome.counts ? (
              <AlsoButton changes={countedTry(key, keys)}>Use this swatch</AlsoButton>
            ) : null}
            {canBeTakenOut ? (
              <AlsoButton look="plain" changes={takenOut(key)}>
                {`Remove swatch ${number}`}
              </AlsoButton>
            ) : null}
          </div>
        ) : null}
      </Sheet>
    </section>
  );
}

function SwatchNumbers({ report, swatch: key }: { readonly report: FilledReport; readonly swatch: string }) {
  const fieldOfPart = (part: SwatchPart) => fieldOf.swatch(key, part);
  const { pattern, unit } = report.context;
  const [over, keyboard] = unit === "in" ? (["4", "text"] as const) : (["10", "decimal"] as const);
  return (
    <div className="grid gap-5">
      {pattern.fabrics.length > 1 ? (
        <ChoiceField
          report={report}
          keepsSpace
          field={fieldOfPart("fabric")}
          legend="Fabric"
          choices={pattern.fabrics.map(({ id, label }) => ({ value: id, label }))}
        />
      ) : null}
      <FieldPair report={report} names={[fieldOfPart("stitches"), fieldOfPart("across")]}>
        <ReportField report={report} field={fieldOfPart("stitches")} label="Stitches" hasQuestion={false} />
        <ReportField
          {...{ report, keyboard, unit }}
          field={fieldOfPart("across")}
          label="over a width of"
          prefilled={over}
          hasQuestion={false}
        />
      </FieldPair>
      <FieldPair report={report} names={[fieldOfPart("rows"), fieldOfPart("along")]}>
        <ReportField report={report} field={fieldOfPart("rows")} label="Rows or rounds" hasQuestion={false} />
        <ReportField
          {...{ report, keyboard, unit }}
          field={fieldOfPart("along")}
          label="over a height of"
          prefilled={over}
          hasQuestion={false}
        />
      </FieldPair>
      <SharedQuestion report={report} fields={COUNTED.map(fieldOfPart)}>
        <p className="font-semibold">How to count</p>
        <ol className="list-decimal pl-5">
          <li>Lay the swatch flat without stretching it.</li>
          <li>Count in its middle, away from the edges; half a stitch counts, too.</li>
          <li>Count over the whole width and height that you enter.</li>
        </ol>
      </SharedQuestion>
      <ChoiceField
        report={report}
        keepsSpace
        field={fieldOfPart("washed")}
        legend="Washed and dried like the garment"
        choices={[
          { value: "yes", label: "Yes" },
          { value: "no", label: "Not yet" },
        ]}
      />
      <BlockingField report={report} field={fieldOfPart("blocking")} what="swatch" />
      <BeforeBlocking report={report} swatch={key} />
      <ToolField report={report} swatch={key} />
      <HowCounted report={report} swatch={key} />
    </div>
  );
}

const COUNTED: readonly SwatchPart[] = ["stitches", "across", "rows", "along"];

function countedTry(key: string, keys: readonly string[]): Record<string, string> {
  return Object.fromEntries(keys.map((other) => [fieldOf.swatch(other, "used"), other === key ? "yes" : ""]));
}

const PARTS: readonly SwatchPart[] = [
  ...(["fabric", "toolMm", "stitches", "across", "rows", "along"] as const),
  ...(["beforeStitches", "beforeAcross", "beforeRows", "beforeAlong"] as const),
  ...(["washed", "blocking", "on", "worked", "used", "kept"] as const),
];

function takenOut(key: string): Record<string, null> {
  return Object.fromEntries(PARTS.map((part) => [fieldOf.swatch(key, part), null]));
}
