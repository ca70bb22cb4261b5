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

/** Id of a field's remarks where they stand elsewhere than its faults. */
export function remarksId(field: string): string {
  return `${field}-remarks`;
}

/** What is missing in a field, and how it was read. */
export function Remarks({ remarks }: { readonly remarks: readonly string[] }) {
  return remarks.map((message) => (
    <p key={message} className="mt-1.5 text-sm text-soft wrap-anywhere">
      {" "}
      {message}{" "}
    </p>
  ));
}
