"use client";

import { Sheet } from "@/ui/sheet";

/** A finished measurement in words, as it is sent to the browser. */
export interface ListedMeasurement {
  readonly id: string;
  readonly letter: string;
  readonly label: string;
  readonly how: string;
  /** Null where there are no counts. */
  readonly length: string | null;
  readonly tolerance: string;
}

/** Finished measurements, a line each. */
export function FinishedList({ measurements }: { readonly measurements: readonly ListedMeasurement[] }) {
  return (
    <Sheet>
      <ul className="grid gap-4">
        {measurements.map(({ id, letter, label, how, length, tolerance }) => (
          <li key={id} className="grid grid-cols-[2.25rem_minmax(0,1fr)_auto] gap-x-2 wrap-anywhere">
            <span className="font-bold">{letter}</span>
            <div>
              <p className="font-semibold">{label}</p>
              <p className="text-sm text-soft" dir="auto">
                {how}
              </p>
            </div>
            <p className="numbers whitespace-nowrap text-right">
              {length === null ? (
                <span className="text-soft">no counts</span>
              ) : (
                <>
                  <b className="font-semibold">{length}</b>
                  <span className="block text-sm text-soft">{`± ${tolerance}`}</span>
                </>
              )}
            </p>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
