import type { ReactNode } from "react";

/** A sheet of paper on the page, for what belongs together. */
export function Sheet({ children, className = "" }: { readonly children: ReactNode; readonly className?: string }) {
  return (
    <div
      className={`rounded-sheet border border-line bg-sheet px-[min(1.25rem,6vw)] py-5 shadow-sheet sm:px-6 sm:py-6 ${className}`}
    >
      {children}
    </div>
  );
}
