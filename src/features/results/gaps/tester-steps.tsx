import type { LengthUnit } from "@/engine/units";
import { formatChange, formatLength } from "@/ui/format-length";
import type { NotCounted } from "@/engine/results";
import type { CellReading } from "./cell-readings";
import { deciderWords, usedWords } from "../mistakes/decision-copy";
import { blockedOtherwiseWords, driftWords } from "./drift-copy";
import type { ShownStep } from "./shown-steps";
import { entryErrorSentence } from "../mistakes/entry-error-copy";
import { placeSteps, type StepScale } from "./step-scale";
import { DecisionForms } from "../mistakes/decision-forms";
import { StepPicture } from "./step-picture";

const WHY_NOT: Readonly<Record<Exclude<NotCounted, "set-aside">, string>> = {
  changed: "Excluded: changed on purpose.",
  unwashed: "Excluded: measured before washing.",
  slip: "Excluded automatically as a possible mistake.",
};

interface TesterStepsProps {
  /** Null where the viewer may only view. */
  readonly decidesIn: string | null;
  readonly name: string;
  readonly reading: CellReading;
  readonly steps: readonly ShownStep[];
  readonly scale: StepScale;
  readonly unit: LengthUnit;
}

/** One tester's reading: the sentence, why it may not count, and the picture. */
export function TesterSteps({ decidesIn, name, reading, steps, scale, unit }: TesterStepsProps) {
  const { which, notCounted, suspect } = reading;
  const title = which === null ? name : `${name}, reading ${which}`;
  const drift = driftWords(reading);
  const standing = standingWords(reading, unit);
  return (
    <li
      className={`flex flex-col rounded-sheet border bg-sheet p-4 ${notCounted ? "border-dashed border-line-strong" : "border-line"}`}
    >
      <h4 className="font-semibold [overflow-wrap:anywhere]">{title}</h4>
      <p className="numbers mb-2 text-sm text-soft">{explained(steps, unit)}</p>
      {standing === null ? null : <p className="mb-2 text-sm font-semibold">{standing}</p>}
      {suspect ? <p className="mb-2 text-sm font-semibold">{entryErrorSentence(suspect, unit)}</p> : null}
      {drift === null ? null : <p className="numbers mb-2 text-sm text-soft">{drift}</p>}
      {reading.blockedOtherwise === undefined ? null : (
        <p className="mb-2 text-sm text-soft">{blockedOtherwiseWords(reading.blockedOtherwise)}</p>
      )}
      <StepPicture
        {...placeSteps(steps, scale)}
        caption={`${title}: from target to reading`}
        counted={notCounted === null}
      />
      {decidesIn === null || notCounted === "changed" ? null : (
        <div className="mt-auto">
          <DecisionForms
            callId={decidesIn}
            item={{ tester: reading.tester, part: "readings", position: reading.position }}
            counts={notCounted === null}
            name={title}
            decision={reading.decision}
            decided={reading.made?.at?.toISOString() ?? ""}
            unit={unit}
          />
        </div>
      )}
    </li>
  );
}

/** Why it is excluded, or who included it; null where it simply counts. */
function standingWords({ notCounted, decision, made, typedCm }: CellReading, unit: LengthUnit): string | null {
  if (notCounted === "set-aside") return `Excluded by ${deciderWords(made)}.`;
  if (notCounted !== null) return WHY_NOT[notCounted];
  const used = usedWords(decision, made, unit);
  if (used !== null && typedCm !== undefined) return `${formatLength(typedCm, unit)} was reported; ${used}`;
  return decision === "keep" ? `Included by ${deciderWords(made)}.` : null;
}

/** `Their gauge explains +1.4 cm; the remaining difference is +2.1 cm.`, from the numbers as shown. */
function explained(steps: readonly ShownStep[], unit: LengthUnit): string {
  const change = (kind: ShownStep["kind"]) => formatChange(steps.find((step) => step.kind === kind)?.cm ?? 0, unit);
  return `Their gauge explains ${change("gauge")}; the remaining difference is ${change("gap")}.`;
}
