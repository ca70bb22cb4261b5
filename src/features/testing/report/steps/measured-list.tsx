import Link from "next/link";
import type { MeasuredItem, MeasuredState } from "./measured";

const STATES: Readonly<Record<MeasuredState, { readonly sign: string; readonly words: string }>> = {
  empty: { sign: "○", words: "not measured yet" },
  read: { sign: "●", words: "measured" },
  asked: { sign: "?", words: "open question" },
  faulty: { sign: "▲", words: "needs fixing" },
  changed: { sign: "–", words: "changed on purpose" },
};

/** All measurements, each with its state and readings. */
export function MeasuredList({
  items,
  current,
}: {
  readonly items: readonly MeasuredItem[];
  readonly current: string;
}) {
  return (
    <nav aria-label="All measurements" className="mt-8">
      <h2 className="mb-3">All measurements</h2>
      <ol className="rounded-sheet border border-line bg-sheet">
        {items.map(({ measurement: { id, letter, label }, state, typed }) => (
          <li key={id} className="border-b border-line last:border-b-0">
            <Link
              href={`?m=${id}`}
              prefetch={false}
              aria-current={id === current ? "true" : undefined}
              className="flex min-h-12 items-center gap-3 px-4 py-2 hover:bg-band aria-[current=true]:bg-band"
            >
              <span className={`w-4 shrink-0 text-center font-semibold ${state === "faulty" ? "text-thread" : ""}`}>
                <span aria-hidden="true">{STATES[state].sign}</span>
                <span className="sr-only">{STATES[state].words}:</span>
              </span>
              <span className="min-w-0 flex-1 wrap-anywhere">
                <span className="numbers mr-1.5 font-semibold">{letter}</span>
                {label}
              </span>
              <bdi className="numbers max-w-[40%] shrink-0 truncate text-soft">{typed}</bdi>
            </Link>
          </li>
        ))}
      </ol>
    </nav>
  );
}
