import { IntervalRuler, rulerEstimate, type RulerMark } from "@/ui/interval-ruler";

interface Key {
  readonly mark: RulerMark;
  readonly value: number;
  readonly half: number;
  readonly says: string;
}

const KEYS: readonly Key[] = [
  { mark: "full", value: 0.2, half: 0.5, says: "as planned" },
  { mark: "strong", value: 1.6, half: 0.4, says: "different from the pattern" },
  { mark: "hollow", value: 0.9, half: 0.8, says: "not enough data yet" },
];

/** What the rulers mean. */
export function RulerLegend({ reach }: { readonly reach: number }) {
  return (
    <div className="mb-4 flex flex-wrap items-start gap-x-7 gap-y-2 text-sm text-soft">
      <details className="max-w-xl">
        <summary className="text-link inline-block cursor-pointer">How to read the rulers</summary>
        <p className="mt-1">
          The band is one tolerance either side of what the pattern plans at the tester’s gauge: left of it is too
          small, right of it too big. Every ruler covers {reach} tolerances. The dot is the estimate; the true
          difference is on the line with 90 % certainty. A number in a circle is the likely cause above that explains
          the difference.
        </p>
      </details>
      <ul className="flex flex-wrap gap-x-6 gap-y-1">
        {KEYS.map(({ mark, value, half, says }) => (
          <li key={mark} className="flex items-center gap-2">
            <span className="w-22 shrink-0">
              <IntervalRuler
                mark={mark}
                estimate={rulerEstimate({ value, low: value - half, high: value + half }, reach)}
              />
            </span>
            {says}
          </li>
        ))}
      </ul>
    </div>
  );
}
