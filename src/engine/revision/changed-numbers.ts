import { ownValue, type CmBySize, type PatternDocument } from "../pattern";

/** One number of a pattern that a revision changes; `was` is null if it is new. */
export interface Change {
  readonly path: string;
  readonly size?: string;
  readonly was: number | null;
  readonly becomes: number;
}

/** Numbers of fabrics, allowances and grading that differ, in the pattern's order. */
export function changedNumbers(before: PatternDocument, after: PatternDocument): Change[] {
  return [...fabricChanges(before, after), ...allowanceChanges(before, after), ...gradingChanges(before, after)];
}

function fabricChanges(before: PatternDocument, after: PatternDocument): Change[] {
  return after.fabrics.flatMap((fabric, index) =>
    (["settles", "wornStretch"] as const).flatMap((factor) =>
      (["across", "along"] as const).flatMap((side) => {
        const was = before.fabrics[index]?.[factor]?.[side] ?? 1;
        const becomes = fabric[factor]?.[side] ?? 1;
        return was === becomes ? [] : [{ path: `fabrics[${index}].${factor}.${side}`, was, becomes }];
      }),
    ),
  );
}

function allowanceChanges(before: PatternDocument, after: PatternDocument): Change[] {
  return after.allowances.flatMap(({ id, cm }, index) => {
    const was = before.allowances.find((allowance) => allowance.id === id)?.cm;
    const path = `allowances[${index}].cm`;
    if (typeof cm === "number" && (was === undefined || typeof was === "number")) {
      return was === cm ? [] : [{ path, was: was ?? null, becomes: cm }];
    }
    return after.sizes.flatMap(({ id: size }) => {
      const old = was === undefined ? null : valueIn(was, size);
      const becomes = valueIn(cm, size);
      return becomes === null || old === becomes ? [] : [{ path, size, was: old, becomes }];
    });
  });
}

function valueIn(cm: CmBySize, size: string): number | null {
  return typeof cm === "number" ? cm : (ownValue(cm, size) ?? null);
}

function gradingChanges(before: PatternDocument, after: PatternDocument): Change[] {
  return after.counts.flatMap(({ id }) =>
    after.sizes.flatMap(({ id: size }) => {
      const was = ownValue(ownValue(before.grading, id), size) ?? null;
      const becomes = ownValue(ownValue(after.grading, id), size);
      return becomes === undefined || was === becomes ? [] : [{ path: `grading.${id}`, size, was, becomes }];
    }),
  );
}
