import { BLOCKING_LABELS } from "@/engine/reporting";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { ChoiceField } from "./choice-field";
import { FoldedFields } from "./folded-fields";

interface BlockingFieldProps {
  readonly report: FilledReport;
  readonly field: string;
  /** What was blocked: `swatch`, `garment`. */
  readonly what: string;
}

const CHOICES = [
  { value: "wet", label: "wet" },
  { value: "steamed", label: "steamed" },
  { value: "machine-washed", label: "machine-washed and dried" },
  { value: "none", label: "not at all" },
];

/** How a swatch or the garment was blocked, folded until the tester says it. */
export function BlockingField({ report, field, what }: BlockingFieldProps) {
  const said = Object.entries(BLOCKING_LABELS).find(([value]) => value === textOf(report, field))?.[1];
  return (
    <FoldedFields summary={`Blocking: ${said ?? "not answered"}`} isOpen={fieldNotes(report, field).remarks.length > 0}>
      <ChoiceField report={report} field={field} legend={`How the ${what} was blocked`} choices={CHOICES} />
    </FoldedFields>
  );
}
