import type { ReactNode } from "react";

interface QuestionSpaceProps {
  /** Fills the space while nothing is asked. */
  readonly space: ReactNode;
  /** On a phone, for questions with long words and several answers. */
  readonly isTall?: boolean;
  readonly children: ReactNode;
}

/** Messages stand above what fills their space, a question in its place, so that nothing below moves. */
export function QuestionSpace({ space, isTall = false, children }: QuestionSpaceProps) {
  return (
    <div className="group/space grid *:col-start-1 *:row-start-1 *:min-w-0">
      <div
        className={`${isTall ? "min-h-64 pt-1 sm:min-h-36" : "min-h-44 pt-9 sm:min-h-36 sm:pt-5"} has-data-kept:pt-0 group-has-[[role=status],[data-asked]]/space:invisible`}
      >
        {space}
      </div>
      <div className="relative z-1 self-start">{children}</div>
    </div>
  );
}
