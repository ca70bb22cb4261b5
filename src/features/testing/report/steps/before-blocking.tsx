import { fieldOf, type SwatchPart } from "@/engine/reporting";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { FieldPair } from "./field-pair";
import { FoldedFields } from "./folded-fields";
import { ReportField } from "./report-field";

interface BeforeBlockingProps {
  readonly report: FilledReport;
  /** The key of the swatch. */
  readonly swatch: string;
}

/** What a tester counted in their swatch before blocking it, if they did: folded until they say it. */
export function BeforeBlocking({ report, swatch }: BeforeBlockingProps) {
  const { unit } = report.context;
  const [usual, keyboard] = unit === "in" ? (["4", "text"] as const) : (["10", "decimal"] as const);
  const fieldName = (part: SwatchPart) => fieldOf.swatch(swatch, part);
  const typed = (part: SwatchPart) => textOf(report, fieldName(part))?.trim() ?? "";
  const [stitches, rows] = [typed("beforeStitches"), typed("beforeRows")];
  const isOpen = PARTS.some((part) => fieldNotes(report, fieldName(part)).faults.length > 0);
  const told = stitches === "" && rows === "" ? "not counted" : `${stitches || "?"} stitches, ${rows || "?"} rows`;
  return (
    <FoldedFields summary={`Before blocking: ${told}`} isOpen={isOpen}>
      <p className="text-sm text-soft">
        Did you count this swatch before blocking it, too? It shows how much the fabric grows, which matters wherever
        the pattern says “until it measures …”.
      </p>
      <FieldPair report={report} names={[fieldName("beforeStitches"), fieldName("beforeAcross")]}>
        <ReportField report={report} field={fieldName("beforeStitches")} label="Unblocked stitches" />
        <ReportField
          {...{ report, keyboard, unit }}
          field={fieldName("beforeAcross")}
          label="over a width of"
          placeholder={typed("across") || usual}
        />
      </FieldPair>
      <FieldPair report={report} names={[fieldName("beforeRows"), fieldName("beforeAlong")]}>
        <ReportField report={report} field={fieldName("beforeRows")} label="Unblocked rows" />
        <ReportField
          {...{ report, keyboard, unit }}
          field={fieldName("beforeAlong")}
          label="over a height of"
          placeholder={typed("along") || usual}
        />
      </FieldPair>
    </FoldedFields>
  );
}

const PARTS: readonly SwatchPart[] = ["beforeStitches", "beforeAcross", "beforeRows", "beforeAlong"];
