"use client";

import type { ReportChoices, TableFault } from "@/engine/tables";
import { Field, Select, TextInput } from "@/ui/field";

export interface OpenCall {
  readonly callId: string;
  readonly title: string;
  readonly testers: number;
}

interface PasteReportFieldsProps {
  readonly choices: ReportChoices;
  readonly faults: readonly TableFault[];
  readonly calls: readonly OpenCall[];
  readonly callId: string | null;
  readonly onCall: (callId: string | null) => void;
  readonly onChange: (choices: Partial<Pick<ReportChoices, "swatchOver" | "washed">>) => void;
}

const USUAL_WIDTHS = ["10 cm", "4 in"];

/** What applies to the whole table: which test it belongs to, and facts about swatches that no column gives. */
export function PasteReportFields({ choices, faults, calls, callId, onCall, onChange }: PasteReportFieldsProps) {
  const hasColumn = (kind: ReportChoices["columns"][number]["kind"]) =>
    choices.columns.some((choice) => choice.kind === kind);
  const hasSwatch = hasColumn("swatch stitches") || hasColumn("swatch rows");
  const errors = faults.filter(({ field }) => field === "swatchOver").map(({ message }) => message);
  const isOther = !USUAL_WIDTHS.includes(choices.swatchOver);
  return (
    <div className="grid gap-x-6 sm:grid-cols-3">
      {calls.length === 0 ? null : (
        <Field id="reports-call" label="Add them to">
          <Select
            id="reports-call"
            value={callId ?? "new"}
            onChange={({ currentTarget }) => onCall(currentTarget.value === "new" ? null : currentTarget.value)}
          >
            {calls.map(({ callId: id, title, testers }) => (
              <option key={id} value={id}>{`${title} (${testers} so far)`}</option>
            ))}
            <option value="new">a new test</option>
          </Select>
        </Field>
      )}
      {hasSwatch && !(hasColumn("swatch across") && hasColumn("swatch along")) ? (
        <Field id="reports-over" label="Swatches were counted over" errors={errors}>
          <Select
            id="reports-over"
            value={isOther ? "other" : choices.swatchOver}
            onChange={({ currentTarget }) =>
              onChange({ swatchOver: currentTarget.value === "other" ? "" : currentTarget.value })
            }
          >
            {USUAL_WIDTHS.map((width) => (
              <option key={width}>{width}</option>
            ))}
            <option value="other">another width</option>
          </Select>
          {isOther ? (
            <TextInput
              aria-label="Width of the swatches"
              placeholder="5 cm"
              value={choices.swatchOver}
              className="numbers mt-2"
              onChange={({ currentTarget }) => onChange({ swatchOver: currentTarget.value })}
            />
          ) : null}
        </Field>
      ) : null}
      {hasSwatch ? (
        <Field
          id="reports-washed"
          label={hasColumn("washed") ? "If the table does not say, they were" : "Swatches were"}
        >
          <Select
            id="reports-washed"
            value={choices.washed ? "washed" : "unwashed"}
            onChange={({ currentTarget }) => onChange({ washed: currentTarget.value === "washed" })}
          >
            <option value="washed">washed</option>
            <option value="unwashed">not washed</option>
          </Select>
        </Field>
      ) : null}
    </div>
  );
}
