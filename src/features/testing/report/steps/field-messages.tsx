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
      {remarks.map((message) => (
        <p key={message} className="mt-1.5 text-sm text-soft wrap-anywhere">
          {" "}
          {message}{" "}
        </p>
      ))}
    </div>
  );
}
