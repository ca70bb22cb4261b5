import type { Fabric, Measurement, PatternDocument, Size, Swatch } from "@/engine/pattern";
import { explainMeasurement, indexPattern, type Explanation } from "@/engine/prediction";
import type { MethodResults } from "@/engine/results";

type StoredExample = NonNullable<MethodResults["example"]>;
type StoredAverage = NonNullable<MethodResults["plainAverage"]>;

/** One counted reading of the call, with everything it is calculated from. */
export interface MethodExample extends Pick<StoredExample, "prediction" | "step" | "readings"> {
  readonly name: string;
  readonly size: Size;
  readonly measurement: Measurement;
  readonly swatches: readonly { readonly fabric: Fabric; readonly swatch: Swatch }[];
  readonly explanation: Explanation;
}

/** Three ways to estimate a cell, from the crudest to the engine's, cm. */
export interface PlainAverage extends Omit<StoredAverage, "size" | "measurement" | "testers"> {
  readonly size: Size;
  readonly measurement: Measurement;
  readonly testers: readonly { readonly name: string; readonly crudeCm: number; readonly gapCm: number }[];
}

interface MethodGiven {
  readonly pattern: PatternDocument;
  readonly method: MethodResults;
  readonly names: ReadonlyMap<string, string>;
}

/** The reading to follow step by step; null where none has a swatch. */
export function methodExample({ pattern, method: { example }, names }: MethodGiven): MethodExample | null {
  if (example === null) return null;
  const { tester, prediction, step, readings } = example;
  const cell = cellOf(pattern, example);
  if (cell === null) return null;
  return {
    ...{ ...cell, prediction, step, readings, name: names.get(tester) ?? tester },
    swatches: example.swatches.flatMap(({ fabric: id, swatch }) => {
      const fabric = pattern.fabrics.find((given) => given.id === id);
      return fabric ? [{ fabric, swatch }] : [];
    }),
    explanation: explainMeasurement(indexPattern(pattern), cell.measurement, cell.size),
  };
}

/** The cell whose plain average misleads most; null where no cell has two reports. */
export function plainAverage({ pattern, method, names }: MethodGiven): PlainAverage | null {
  const average = method.plainAverage;
  const cell = average === null ? null : cellOf(pattern, average);
  if (average === null || cell === null) return null;
  const testers = average.testers.map(({ tester, ...told }) => ({ ...told, name: names.get(tester) ?? tester }));
  return { ...average, ...cell, testers };
}

/** More rows of a plain average prove nothing; all are in the file to download. */
export const MOST_ROWS = 12;

/** The rest of what is excluded is on the page of possible mistakes, where each can be included again. */
export const MOST_TOLD = 30;

/** Ids of all testers whom the method page names. */
export function testersNamed({ example, plainAverage: average, suspects }: MethodResults): string[] {
  return [
    ...(example === null ? [] : [example.tester]),
    ...(average?.testers.slice(0, MOST_ROWS).map(({ tester }) => tester) ?? []),
    ...suspects.slice(0, MOST_TOLD).map(({ tester }) => tester),
  ];
}

function cellOf(
  { sizes, measurements }: PatternDocument,
  at: { readonly size: string; readonly measurement: string },
): { readonly size: Size; readonly measurement: Measurement } | null {
  const size = sizes.find(({ id }) => id === at.size);
  const measurement = measurements.find(({ id }) => id === at.measurement);
  return size === undefined || measurement === undefined ? null : { size, measurement };
}
