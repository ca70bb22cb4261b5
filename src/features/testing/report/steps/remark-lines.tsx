"use client";

import { Remarks, remarksId } from "./field-messages";

interface RemarkLinesProps {
  /** A field, and what is said of it. */
  readonly lines: readonly (readonly [field: string, ...remarks: string[]])[];
  readonly isTall: boolean;
}

export function RemarkLines({ lines, isTall }: RemarkLinesProps) {
  return (
    <div className={`-mb-5 flow-root ${isTall ? "min-h-11.5 sm:min-h-6.5" : "min-h-6.5"}`}>
      {lines.map(([field, ...remarks]) => (
        <div key={field} id={remarksId(field)}>
          <Remarks remarks={remarks} />
        </div>
      ))}
    </div>
  );
}
