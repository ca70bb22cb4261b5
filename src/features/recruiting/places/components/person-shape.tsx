import type { PersonMark } from "../stored-board";

interface PersonShapeProps {
  readonly mark: PersonMark;
  /** Half of its width, px. */
  readonly r: number;
}

/** A person's mark around the origin: a disc if placed by Sizewright, a square if by the designer, a diamond once invited, a ring while waiting. */
export function PersonShape({ mark, r }: PersonShapeProps) {
  switch (mark) {
    case "placed":
      return <circle r={r} className="fill-ink" />;
    case "locked":
      return <rect x={-0.9 * r} y={-0.9 * r} width={1.8 * r} height={1.8 * r} className="fill-ink" />;
    case "invited":
      return <path d={`M0 ${-1.25 * r}L${1.25 * r} 0L0 ${1.25 * r}L${-1.25 * r} 0Z`} className="fill-thread" />;
    case "waiting":
      return <circle r={r - 0.8} strokeWidth="1.6" className="fill-sheet stroke-ink" />;
  }
}

/** What a mark means, for the legend and for screen readers. */
export const MARK_WORDS: Readonly<Record<PersonMark, string>> = {
  placed: "placed by Sizewright",
  locked: "locked by you",
  invited: "invited",
  waiting: "waiting",
};
