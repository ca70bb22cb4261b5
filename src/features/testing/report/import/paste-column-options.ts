import type { ColumnChoice } from "@/engine/tables";
import type { PatternDocument } from "@/engine/pattern";

interface ColumnOption {
  readonly value: string;
  readonly label: string;
  readonly choice: ColumnChoice;
}

export interface OptionGroup {
  readonly label: string;
  readonly options: readonly ColumnOption[];
}

/** Everything that a column of reports can hold for a pattern, in groups. */
export function columnOptions(pattern: PatternDocument): OptionGroup[] {
  const groups = [
    { label: "The tester", options: testerOptions() },
    ...pattern.fabrics.map((fabric) => swatchGroup(pattern, fabric)),
    {
      label: "Finished measurements",
      options: pattern.measurements.map(({ id, letter, label }) =>
        option(`${letter} ${label}`.trim(), { kind: "measurement", id, unit: "cm", flat: false }),
      ),
    },
    {
      label: "Counts as worked",
      options: pattern.counts.map(({ id, label }) => option(label, { kind: "count", id })),
    },
    {
      label: "Yarn",
      options: pattern.yarns.flatMap(({ id, label }) => [
        option(`${label}: how much was used`, { kind: "yarn", id, amountIn: "g" }),
        option(`${label}: its name`, { kind: "yarn name", id }),
      ]),
    },
    {
      label: "Fit",
      options: (pattern.bodyMeasurements ?? []).map(({ id, label }) =>
        option(`Fit: ${label}`, { kind: "fit", id, isOneToFive: true }),
      ),
    },
  ];
  return groups.filter(({ options }) => options.length > 0);
}

/** The same choice has the same value in either unit. */
export function valueOfChoice(choice: ColumnChoice): string {
  const named = "id" in choice ? choice.id : "fabric" in choice ? choice.fabric : "";
  return `${choice.kind} ${named}`.trim();
}

function option(label: string, choice: ColumnChoice): ColumnOption {
  return { value: valueOfChoice(choice), label, choice };
}

function testerOptions(): ColumnOption[] {
  return [
    option("Name", { kind: "name" }),
    option("Size", { kind: "size" }),
    option("Swatch washed, yes or no", { kind: "washed" }),
    option("Hours", { kind: "hours" }),
    option("Unit: cm or inches", { kind: "unit" }),
    option("Comment", { kind: "comment" }),
  ];
}

function swatchGroup(
  { craft, fabrics }: PatternDocument,
  { id: fabric, label }: PatternDocument["fabrics"][number],
): OptionGroup {
  return {
    label: fabrics.length === 1 ? "Swatch" : `Swatch of ${label}`,
    options: [
      option("Stitches in the swatch", { kind: "swatch stitches", fabric }),
      option("Rows in the swatch", { kind: "swatch rows", fabric }),
      option("Stitches and rows in one cell", { kind: "swatch", fabric }),
      option("Width and height of the swatch", { kind: "swatch over", fabric, unit: "cm" }),
      option("Width of the swatch", { kind: "swatch across", fabric, unit: "cm" }),
      option("Height of the swatch", { kind: "swatch along", fabric, unit: "cm" }),
      option(craft === "crochet" ? "Hook size" : "Needle size", { kind: "tool", fabric }),
    ],
  };
}
