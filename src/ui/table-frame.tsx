import type { ReactNode } from "react";

/**
 * A frame in which a wide table scrolls by itself, reachable by keyboard, so that the page never does. It is `relative`, or text for screen readers, which is out of the flow, would widen the page.
 */
export function TableFrame({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div
      role="region"
      aria-label={label}
      tabIndex={0}
      className="relative overflow-x-auto rounded-sheet border border-line bg-sheet shadow-sheet"
    >
      {children}
    </div>
  );
}

/** Classes of a plain table in such a frame. */
export const TABLE = "w-full border-collapse text-left [&_td]:px-3 [&_td]:py-2 [&_th]:px-3 [&_th]:py-2";
export const TABLE_HEAD = "border-b border-line-strong text-sm text-soft [&_th]:font-semibold";
export const TABLE_ROW = "border-b border-line last:border-b-0";
