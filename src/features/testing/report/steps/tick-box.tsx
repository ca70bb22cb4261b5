import { AskedAtField } from "../autosave/asked-at-field";
import { textOf, type FilledReport } from "../filled-report";

interface TickBoxProps {
  readonly report: FilledReport;
  readonly field: string;
  readonly label: string;
}

/** A checkbox for yes. */
export function TickBox({ report, field, label }: TickBoxProps) {
  return (
    <div className="min-w-0">
      <label className="flex min-h-11 items-center gap-3">
        {/* Browsers do not send unchecked boxes. */}
        <input type="hidden" name={field} value="" />
        <input
          type="checkbox"
          name={field}
          value="yes"
          defaultChecked={textOf(report, field) === "yes"}
          className="size-5 shrink-0 accent-thread"
        />
        <span className="min-w-0 wrap-anywhere">{label}</span>
      </label>
      <AskedAtField field={field} />
    </div>
  );
}
