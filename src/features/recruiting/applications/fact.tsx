import type { ReactNode } from "react";

/** A list of answers. */
export function Facts({ children }: { readonly children: ReactNode }) {
  return <dl className="divide-y divide-line rounded-sheet border border-line bg-sheet shadow-sheet">{children}</dl>;
}

/** One answer; "none" if it is empty. */
export function Fact({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className="gap-x-6 px-5 py-2.5 sm:grid sm:grid-cols-[11rem_1fr]">
      <dt className="text-sm text-soft sm:text-base">{label}</dt>
      <dd className="min-w-0 whitespace-pre-wrap wrap-anywhere">
        {children === "" ? <span className="text-soft">none</span> : <bdi>{children}</bdi>}
      </dd>
    </div>
  );
}
