import type { ReactNode } from "react";

interface EmptyStateProps {
  readonly title: string;
  readonly children: ReactNode;
  readonly actions?: ReactNode;
}

/** Shown where there is nothing yet: what will be here, and how to get it. */
export function EmptyState({ title, children, actions }: EmptyStateProps) {
  return (
    <div className="rounded-sheet border border-dashed border-line-strong px-6 py-12 text-center">
      <h2 className="mb-2">{title}</h2>
      <div className="mx-auto max-w-xl text-soft">{children}</div>
      {actions ? <div className="mt-6 flex flex-wrap justify-center gap-3">{actions}</div> : null}
    </div>
  );
}
