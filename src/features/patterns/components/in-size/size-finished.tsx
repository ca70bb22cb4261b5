import type { PatternDocument, Size } from "@/engine/pattern";
import { finishedMeasurements } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { Sheet } from "@/ui/sheet";

interface SizeFinishedProps {
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly unit: LengthUnit;
}

/** What each finished measurement comes to in one size, with its letter and how to lay the tape. */
export function SizeFinished({ pattern, size, unit }: SizeFinishedProps) {
  return (
    <Sheet>
      <ul className="grid gap-4">
        {finishedMeasurements(pattern).map(({ measurement: { id, letter, label, how, toleranceCm }, sizes }) => {
          const cm = sizes.find((entry) => entry.size === size.id)?.designCm ?? null;
          return (
            <li key={id} className="grid grid-cols-[2.25rem_minmax(0,1fr)_auto] gap-x-2 wrap-anywhere">
              <span className="font-bold">{letter}</span>
              <div>
                <p className="font-semibold">{label}</p>
                <p className="text-sm text-soft" dir="auto">
                  {how}
                </p>
              </div>
              <p className="numbers whitespace-nowrap text-right">
                {cm === null ? (
                  <span className="text-soft">no counts</span>
                ) : (
                  <>
                    <b className="font-semibold">{formatLength(cm, unit)}</b>
                    <span className="block text-sm text-soft">± {formatLength(toleranceCm, unit)}</span>
                  </>
                )}
              </p>
            </li>
          );
        })}
      </ul>
    </Sheet>
  );
}
