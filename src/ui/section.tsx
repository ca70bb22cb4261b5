import { useId, type ReactNode } from "react";

interface SectionProps {
  readonly title: string;
  readonly intro?: ReactNode;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** A titled part of a page. */
export function Section({ title, intro, actions, children }: SectionProps) {
  const id = useId();
  return (
    <section aria-labelledby={id} className="mb-12">
      <div className="mb-4 flex flex-wrap items-baseline justify-between gap-x-6 gap-y-2">
        <h2 id={id}>{title}</h2>
        {actions}
      </div>
      {intro ? <div className="-mt-2 mb-4 max-w-3xl text-soft">{intro}</div> : null}
      {children}
    </section>
  );
}
