import type { ReactNode } from "react";

interface FoldedFieldsProps {
  /** What the fields say now. */
  readonly summary: ReactNode;
  /** Where something in them is to be seen at once. */
  readonly isOpen?: boolean;
  readonly children: ReactNode;
}

/** Fields that most testers leave as they are: their present values in one line, which opens them. */
export function FoldedFields({ summary, isOpen = false, children }: FoldedFieldsProps) {
  return (
    <details className="folded-fields" open={isOpen}>
      <summary>
        <span className="min-w-0 wrap-anywhere">{summary}</span> <span className="text-link shrink-0">Change</span>
      </summary>
      <div className="grid gap-5 pb-2 pt-3">{children}</div>
    </details>
  );
}
