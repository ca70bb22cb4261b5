import { fieldNotes, type FilledReport } from "../filled-report";

interface FieldMessagesProps {
  readonly field: string;
  readonly faults: readonly string[];
  readonly remarks: readonly string[];
}

/** Messages below a field: faults are announced to screen readers, remarks are only shown. */
export function FieldMessages({ field, faults, remarks }: FieldMessagesProps) {
  return (
    <div id={`${field}-messages`}>
      <div aria-live="polite">
        {faults.map((message) => (
          <p key={message} className="mt-1.5 flex gap-2 text-sm font-semibold text-thread">
            <span aria-hidden="true">▲</span>
            <span className="min-w-0 wrap-anywhere">{message}</span>
          </p>
        ))}
      </div>
      <Remarks remarks={remarks} />
    </div>
  );
}

interface RemarksBelowProps {
  readonly report: FilledReport;
  readonly fields: readonly string[];
  /** Room for a remark in two lines on a phone. */
  readonly isTall?: boolean;
}

/**
 * Remarks of the fields above, such as that a number is missing, in the gap before what comes next, so that it does not
 * move.
 */
export function RemarksBelow({ report, fields, isTall = false }: RemarksBelowProps) {
  return (
    <div className={`-mb-5 flow-root ${isTall ? "min-h-11.5 sm:min-h-6.5" : "min-h-6.5"}`}>
      {fields.map((field) => (
        <div key={field} id={remarksId(field)}>
          <Remarks remarks={fieldNotes(report, field).remarks} />
        </div>
      ))}
    </div>
  );
}

/** Id of a field's remarks where they stand elsewhere than its faults. */
export function remarksId(field: string): string {
  return `${field}-remarks`;
}

function Remarks({ remarks }: { readonly remarks: readonly string[] }) {
  return remarks.map((message) => (
    <p key={message} className="mt-1.5 text-sm text-soft wrap-anywhere">
      {" "}
      {message}{" "}
    </p>
  ));
}
