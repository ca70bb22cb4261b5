import type { ReactNode } from "react";

/** A sheet of paper on the page, for what belongs together. */
export function Sheet({ children, className = "" }: { readonly children: ReactNode; readonly className?: string }) {
  return (
    <div className={`rounded-sheet border border-line bg-sheet p-5 shadow-sheet sm:p-6 ${className}`}>{children}</div>
  );
}
