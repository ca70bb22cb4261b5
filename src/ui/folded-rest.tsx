import { Fragment, type ReactNode } from "react";

interface FoldedRestProps {
  /** Items of a list, in its order. */
  readonly items: readonly ReactNode[];
  readonly shown: number;
  /** Of the list itself. */
  readonly className: string;
  /** Name of the other items: "questions". */
  readonly of: string;
}

/** A list that shows the first items, and the rest on request. */
export function FoldedRest({ items, shown, className, of }: FoldedRestProps) {
  // One or two more take no more room than the button to show them.
  const first = items.length <= shown + 2 ? items : items.slice(0, shown);
  const rest = items.slice(first.length);
  const list = (some: readonly ReactNode[]) => (
    <ul className={className}>
      {some.map((item, index) => (
        <Fragment key={index}>{item}</Fragment>
      ))}
    </ul>
  );
  if (rest.length === 0) return list(first);
  return (
    <div>
      {list(first)}
      <details>
        <summary className="inline-flex min-h-11 items-center text-thread underline underline-offset-4">
          {rest.length} more {of}
        </summary>
        {list(rest)}
      </details>
    </div>
  );
}
