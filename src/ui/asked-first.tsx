import type { ReactNode } from "react";

interface AskedFirstProps {
  readonly question: string;
  /** What it is about, for screen readers. */
  readonly about?: string;
  /** The consequences, and the form that does it. */
  readonly children: ReactNode;
}

/** An action that needs a second step: opening it shows the consequences. */
export function AskedFirst({ question, about, children }: AskedFirstProps) {
  return (
    <details className="min-w-0 open:basis-full">
      <summary className="inline-flex min-h-11 items-center py-2 text-thread underline underline-offset-4 hover:text-thread-dark">
        {question} …{about ? <span className="sr-only"> {about}</span> : null}
      </summary>
      <div className="mt-1 grid max-w-2xl gap-3 border-l-4 border-line-strong py-1 pl-4 wrap-anywhere">{children}</div>
    </details>
  );
}
