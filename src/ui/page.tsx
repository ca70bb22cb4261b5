import type { ReactNode } from "react";

interface PageProps {
  readonly title: string;
  /** The ways to other pages of the same thing, above all else. */
  readonly navigation?: ReactNode;
  /** A short line above the title, for orientation. */
  readonly above?: ReactNode;
  readonly intro?: ReactNode;
  /** Buttons that belong to the whole page. */
  readonly actions?: ReactNode;
  /** `narrow` for forms and reading. */
  readonly width?: "wide" | "narrow";
  readonly children: ReactNode;
}

/** A page's frame: title, introduction, actions and content, with one main landmark. */
export function Page({ title, navigation, above, intro, actions, width = "wide", children }: PageProps) {
  return (
    <main
      id="content"
      className={`mx-auto w-full flex-1 px-[min(1rem,5vw)] pb-24 pt-8 sm:px-8 ${width === "narrow" ? "max-w-2xl" : "max-w-7xl"}`}
    >
      {navigation ? <div className="-mt-3 mb-6 max-sm:-mt-5 max-sm:mb-4">{navigation}</div> : null}
      <div className="mb-8 flex flex-wrap items-end justify-between gap-x-8 gap-y-4">
        <div className="min-w-0 max-w-3xl">
          {above ? <div className="mb-1.5 text-sm text-soft wrap-anywhere">{above}</div> : null}
          <h1>{title}</h1>
          {intro ? <div className="mt-3 text-lg leading-snug text-soft wrap-anywhere">{intro}</div> : null}
        </div>
        {actions ? <div className="flex flex-wrap items-center gap-3">{actions}</div> : null}
      </div>
      {children}
    </main>
  );
}
