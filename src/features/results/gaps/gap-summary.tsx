import Link from "next/link";
import type { GapBoard } from "./gap-board";
import type { Show } from "../schema";

const WORDS = [
  { show: "off", says: (count: number) => `${count} ${count === 1 ? "is" : "are"} different from the pattern` },
  { show: "holds", says: (count: number) => `${count} as planned` },
  { show: "open", says: (count: number) => `${count} without enough data yet` },
  { show: "none", says: (count: number) => `${count} without a report` },
] as const;

/** The exceptions stand out; the rest are links in ink. */
const LOOKS = {
  off: "text-link font-semibold",
  ...{ holds: "quiet-link", open: "quiet-link", none: "quiet-link" },
} as const;

interface GapSummaryProps {
  readonly board: GapBoard;
  readonly show: Show;
  readonly addressOf: (show: Show) => string;
}

/** The verdicts in one sentence; each number filters to its cells. */
export function GapSummary({ board, show, addressOf }: GapSummaryProps) {
  const sizes = board.sizes.length;
  const measurements = board.rows.length;
  const told = WORDS.filter((word) => word.show === "off" || board.tally[word.show] > 0);
  return (
    <p className="numbers mb-8 max-w-6xl text-pretty font-serif text-lg leading-relaxed sm:text-xl">
      Of {measurements} {measurements === 1 ? "measurement" : "measurements"} in {sizes}{" "}
      {sizes === 1 ? "size" : "sizes"},{" "}
      {told.map((word, index) => (
        <span key={word.show}>
          {index === 0 ? "" : index === told.length - 1 ? " and " : ", "}
          <Tally
            count={board.tally[word.show]}
            says={word.says}
            look={LOOKS[word.show]}
            href={addressOf(word.show)}
            current={show === word.show}
          />
          {word.show === "off" && board.carried > 0 ? ` (${carriedWords(board)})` : ""}
        </span>
      ))}
      .
      {show === undefined ? null : (
        <Link href={addressOf(undefined)} scroll={false} className="text-link ml-3 font-sans text-base">
          Show all
        </Link>
      )}
    </p>
  );
}

/** How many of the differences a single tester carries. */
function carriedWords({ carried, tally }: GapBoard): string {
  const one = "on one tester’s measurements alone";
  if (carried === tally.off) return carried === 1 ? one : `each ${one}`;
  return `${carried} of them ${one}`;
}

interface TallyProps {
  readonly count: number;
  readonly says: (count: number) => string;
  readonly look: string;
  readonly href: string;
  readonly current: boolean;
}

function Tally({ count, says, look, href, current }: TallyProps) {
  if (count === 0) return <>{says(count)}</>;
  return (
    <Link
      href={href}
      scroll={false}
      aria-current={current ? "true" : undefined}
      className={`${look} aria-[current=true]:rounded aria-[current=true]:bg-ink aria-[current=true]:px-2 aria-[current=true]:text-sheet aria-[current=true]:no-underline`}
    >
      {says(count)}
    </Link>
  );
}
