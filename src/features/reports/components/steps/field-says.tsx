interface FieldSaysProps {
  readonly field: string;
  readonly faults: readonly string[];
  readonly remarks: readonly string[];
}

/** Sentences beside a field: what is wrong is announced, what was read is there to be seen. */
export function FieldSays({ field, faults, remarks }: FieldSaysProps) {
  return (
    <div id={`${field}-says`}>
      <div aria-live="polite">
        {faults.map((says) => (
          <p key={says} className="mt-1.5 flex gap-2 text-sm font-semibold text-thread">
            <span aria-hidden="true">▲</span>
            <span className="min-w-0 wrap-anywhere">{says}</span>
          </p>
        ))}
      </div>
      {remarks.map((says) => (
        <p key={says} className="mt-1.5 text-sm text-soft wrap-anywhere">
          {says}
        </p>
      ))}
    </div>
  );
}
