import type { ReactNode } from "react";

/** A titled part of a page that is opened when it is needed. */
export function Fold({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <details className="fold">
      <summary>
        <h2>{title}</h2>
      </summary>
      <div>{children}</div>
    </details>
  );
}
