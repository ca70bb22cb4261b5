import type { ReactNode } from "react";
import { ButtonLink } from "@/ui/button";
import { dueWords } from "../due-copy";
import type { NextThing } from "../next-thing";

interface NextSheetProps {
  readonly home: string;
  readonly next: NextThing;
  readonly zone: string;
  readonly now: Date;
  /** A button below it, where there is nothing to do on another page. */
  readonly children?: ReactNode;
}

/** The next thing to do, with a link to it. */
export function NextSheet({ home, next, zone, now, children }: NextSheetProps) {
  const due = next.by === null ? null : dueWords(next.by, { zone, now });
  return (
    <section
      aria-labelledby="next-thing"
      className="mb-10 rounded-sheet border border-line border-l-4 border-l-thread bg-sheet p-5 shadow-sheet sm:p-6"
    >
      {next.page === null && children ? null : (
        <p className="text-sm font-semibold text-soft">{next.page === null ? "Nothing to do" : "Next"}</p>
      )}
      <h2 id="next-thing" className="mb-2">
        {next.title}
      </h2>
      <p className="text-lg leading-snug">{next.message}</p>
      {due ? (
        <p className="mt-2 numbers">
          {due.isPast ? (
            <span className="font-semibold text-thread">
              <span aria-hidden="true">▲ </span>It was due on {due.day}, {due.from}.
            </span>
          ) : (
            <>
              <span className="font-semibold">{due.left}</span>: by {due.day}.
            </>
          )}
        </p>
      ) : null}
      {next.page === null ? null : (
        <div className="mt-5">
          <ButtonLink href={`${home}/${next.page}`}>{next.button}</ButtonLink>
        </div>
      )}
      {children ? <div className="mt-5">{children}</div> : null}
    </section>
  );
}
