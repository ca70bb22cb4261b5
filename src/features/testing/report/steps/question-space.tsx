import type { ReactNode } from "react";

interface QuestionSpaceProps {
  /** Fills the space while nothing is asked. */
  readonly space: ReactNode;
  /** `tall`: on a phone, for questions with long words and several answers; `line`: for one that is folded. */
  readonly size?: keyof typeof SIZES;
  readonly children: ReactNode;
}

const SIZES = {
  line: "min-h-13 pt-1.5 group-has-[[aria-live]:not(:empty)]/space:invisible",
  usual: "min-h-44 pt-9 sm:min-h-36 sm:pt-5",
  tall: "min-h-64 pt-1 sm:min-h-36",
} as const;

/** Messages stand above what fills their space, a question in its place, so that nothing below moves. */
export function QuestionSpace({ space, size = "usual", children }: QuestionSpaceProps) {
  return (
    <div className="group/space grid *:col-start-1 *:row-start-1 *:min-w-0">
      <div className={`${SIZES[size]} has-data-kept:pt-0 group-has-[[role=status],[data-asked]]/space:invisible`}>
        {space}
      </div>
      <div className="relative z-1 self-start">{children}</div>
    </div>
  );
}
