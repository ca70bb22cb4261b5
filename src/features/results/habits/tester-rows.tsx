"use client";

import { DeviationStrip, type Deviations } from "@/ui/deviation-strip";

/** What is drawn of one tester, and nothing more, because all of it is sent to the browser. */
export interface DrawnTester {
  readonly tester: string;
  readonly name: string;
  /** The size's label. */
  readonly size: string;
  /** Null where none of their measurements can be compared. */
  readonly strip: (Deviations & { readonly title: string }) | null;
  readonly sentences: readonly string[];
  /** Shown where there is no sentence. */
  readonly otherwise: string | null;
}

/** A row per tester. */
export function TesterRows({ testers }: { readonly testers: readonly DrawnTester[] }) {
  return (
    <ul className="tester-rows">
      {testers.map(({ tester, name, size, strip, sentences, otherwise }) => (
        <li key={tester} id={`tester-${tester}`}>
          <h3>
            {name} <span>{size}</span>
          </h3>
          <div>{strip === null ? null : <DeviationStrip {...strip} />}</div>
          <div>
            {otherwise === null ? null : <p className="text-soft">{otherwise}</p>}
            {sentences.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </div>
        </li>
      ))}
    </ul>
  );
}
