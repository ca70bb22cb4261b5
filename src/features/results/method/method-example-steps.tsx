import type { ReactNode } from "react";
import type { ExplainedTerm } from "@/engine/prediction";
import { rowsNoun } from "@/engine/shaping";
import type { LengthUnit } from "@/engine/units";
import { formatChange, formatLength } from "@/ui/format-length";
import { formatExactLength } from "@/ui/format-exact-length";
import { gaugeNumber, gaugeWidth } from "@/ui/format-gauge";
import { Sheet } from "@/ui/sheet";
import type { MethodExample } from "./method-example";
import { shownSteps } from "../gaps/shown-steps";
import { placeSteps, stepScale } from "../gaps/step-scale";
import { StepPicture } from "../gaps/step-picture";

interface MethodExampleStepsProps {
  readonly example: MethodExample;
  readonly unit: LengthUnit;
  readonly sayTerm: (term: ExplainedTerm) => string;
}

/** One real reading, from the swatch to what the tester's gauge does not explain. */
export function MethodExampleSteps({ example, unit, sayTerm }: MethodExampleStepsProps) {
  const { name, size, measurement, explanation, prediction, step, readings } = example;
  const steps = shownSteps(step, unit);
  const shownGapCm = steps.find(({ kind }) => kind === "gap")?.cm ?? 0;
  return (
    <>
      <p className="mb-4 text-soft wrap-anywhere">
        One measurement of this test, step by step: {measurement.letter} {measurement.label}, measured by {name} in size{" "}
        {size.label}.
      </p>
      <ol className="numbers grid gap-4 lg:grid-cols-2">
        <Step i={1} title="The swatch gives the tester’s gauge">
          <Swatches example={example} unit={unit} />
        </Step>
        <Step i={2} title="The pattern’s counts give the planned length">
          <ul className="list-disc space-y-1 pl-5 wrap-anywhere">
            {explanation.lines.map(({ term, totalCm }, index) => (
              <li key={index}>
                {sayTerm(term)}: {formatChange(term.cm, unit)}
                {index === 0 ? "" : `, together ${formatLength(totalCm, unit)}`}
              </li>
            ))}
          </ul>
        </Step>
        <Step i={3} title="The tester’s gauge gives the expected length">
          <Predicted prediction={prediction} unit={unit} />
        </Step>
        <Step i={4} title="What is left is the difference">
          <p className="mb-3">
            They measured {formatLength(step.readingCm, unit)}
            {readings > 1 ? ` (the mean of ${readings} readings)` : ""}: {formatChange(shownGapCm, unit)} from what
            their gauge explains.
          </p>
          <StepPicture
            {...placeSteps(steps, stepScale(steps, unit, measurement.toleranceCm))}
            caption={`${name}, ${measurement.label}: from target to measurement`}
            counted
          />
        </Step>
      </ol>
    </>
  );
}

function Step({ i, title, children }: { readonly i: number; readonly title: string; readonly children: ReactNode }) {
  return (
    <li className="min-w-0">
      <Sheet className="h-full">
        <h3 className="mb-2">
          {i}. {title}
        </h3>
        {children}
      </Sheet>
    </li>
  );
}

function Swatches({ example, unit }: { readonly example: MethodExample; readonly unit: LengthUnit }) {
  const { cm, words } = gaugeWidth(unit);
  const exact = (value: number) => `${formatExactLength(value, unit)} ${unit}`;
  return (
    <>
      {example.swatches.map(({ fabric, swatch }) => (
        <p key={fabric.id} className="mb-2 wrap-anywhere">
          {fabric.label}: they counted {gaugeNumber(swatch.stitches)} stitches over {exact(swatch.acrossCm)} and{" "}
          {gaugeNumber(swatch.rows)} {rowsNoun(fabric)} over {exact(swatch.alongCm)}. That is{" "}
          {gaugeNumber((swatch.stitches / swatch.acrossCm) * cm)} stitches and{" "}
          {gaugeNumber((swatch.rows / swatch.alongCm) * cm)} {rowsNoun(fabric)} to {words}.
        </p>
      ))}
      <p className="text-soft">
        A count can be off by half its finest step (a quarter where it is given to the half), and the tape by half a
        millimetre. Both uncertainties are carried through everything that follows, by the method of the GUM.
      </p>
    </>
  );
}

function Predicted({
  prediction,
  unit,
}: {
  readonly prediction: MethodExample["prediction"];
  readonly unit: LengthUnit;
}) {
  const { designCm, workedCm, predictedCm, acrossCm, alongCm, restCm, standardUncertaintyCm, spreadCm } = prediction;
  const length = (cm: number) => formatLength(cm, unit);
  const worked =
    Math.abs(workedCm - designCm) < 0.05 ? "" : ` With the counts they really worked it would be ${length(workedCm)}.`;
  return (
    <>
      <p className="mb-2">
        At the pattern’s gauge it is {length(designCm)}.{worked} At their gauge it is{" "}
        <strong>{length(predictedCm)}</strong>: {length(acrossCm)} depends on their stitches, {length(alongCm)} on their
        rows, {length(restCm)} on neither.
      </p>
      <p className="text-soft">
        The swatch leaves an uncertainty of {length(standardUncertaintyCm)} (one standard uncertainty). Adding the usual
        change from swatch to garment and the reading of the tape, one of their measurements is expected to vary by{" "}
        {length(spreadCm)}.
      </p>
    </>
  );
}
