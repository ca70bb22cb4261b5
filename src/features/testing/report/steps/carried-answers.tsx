import { fieldOf, keysOf, type ReadingPart } from "@/engine/reporting";
import { Sheet } from "@/ui/sheet";
import { alsoValue } from "../autosave/also";
import { isBlank, textOf, type FilledReport } from "../filled-report";
import { BlockingField } from "./blocking-field";
import { CarriedChoice } from "./carried-choice";
import { usualAnswer } from "./measured";
import { READING_STATES, READING_WAYS } from "./reading-ways";

/** How everything was measured and whether it was washed: asked once, and carried on to every measurement. */
export function CarriedAnswers({ report }: { readonly report: FilledReport }) {
  const hasGirth = report.context.pattern.measurements.some(({ girth }) => girth);
  return (
    <Sheet className="mb-6 grid gap-5">
      {hasGirth ? <Carried report={report} part="way" legend="How you measured around" choices={READING_WAYS} /> : null}
      <Carried report={report} part="state" legend="The garment was" choices={READING_STATES} />
      <BlockingField report={report} field={fieldOf.blocking} what="garment" />
      <p className="text-sm text-soft">
        {hasGirth ? "One width is doubled by Sizewright. Both answers hold" : "This holds"} for every measurement;
        change it at one where it was different.
      </p>
    </Sheet>
  );
}

interface CarriedProps {
  readonly report: FilledReport;
  readonly part: Extract<ReadingPart, "way" | "state">;
  readonly legend: string;
  readonly choices: typeof READING_WAYS;
}

function Carried({ report, part, legend, choices }: CarriedProps) {
  const chosen = usualAnswer(report, part);
  const fields = carriedFields(report, part, chosen);
  return (
    <CarriedChoice
      key={chosen}
      legend={legend}
      chosen={chosen}
      choices={choices.map(({ value, short }) => ({
        ...{ value, label: short },
        changes: alsoValue(Object.fromEntries(fields.map((field) => [field, value]))),
      }))}
    />
  );
}

/** The field of each reading that has no answer yet, or the usual one. */
function carriedFields(report: FilledReport, part: "way" | "state", usual: string | undefined): string[] {
  return report.context.pattern.measurements
    .filter(({ girth }) => part === "state" || girth === true)
    .flatMap(({ id }) => {
      const keys = keysOf(report.typed, { reading: id });
      return (keys.length === 0 ? ["1"] : keys).map((key) => fieldOf.reading(id, key, part));
    })
    .filter((field) => isBlank(report, field) || textOf(report, field) === usual);
}
