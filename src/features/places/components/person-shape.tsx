import type { PersonMark } from "../stored-placing";

interface PersonShapeProps {
  readonly mark: PersonMark;
  /** Half of its width, px. */
  readonly r: number;
}

/** A person about the origin: a disc where the solver has placed her, a square where the designer has, a diamond once she is invited, a ring while she waits. */
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

/** What a mark means, for the legend and for those who hear the page. */
export const MARK_WORDS: Readonly<Record<PersonMark, string>> = {
  placed: "placed by the solver",
  locked: "given this size by you",
  invited: "invited",
  waiting: "waiting",
};
