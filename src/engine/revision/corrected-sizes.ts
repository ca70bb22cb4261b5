import { measurementsOfCount, ownValue, type PatternDocument } from "../pattern";

/** A size that is worked otherwise than in the revision before. */
interface CorrectedSize {
  readonly size: string;
  /** Ids of the measurements that this changes, in the pattern's order; none where no measurement has its counts. */
  readonly measurements: readonly string[];
}

interface Revised {
  readonly before: PatternDocument;
  readonly after: PatternDocument;
  /** Counts whose number is put right in the written instructions of a size. */
  readonly textFixes: readonly { readonly count: string; readonly size: string }[];
}

/**
 * The sizes that a revision has testers work otherwise: another number in the grading, or one that is put right in the
 * text. What only changes the published measurements changes no garment.
 *
 * @returns in the order of the sizes; a size or a count that is new has nothing that was corrected.
 * @see docs/method.md#revision.
 */
export function correctedSizes({ before, after, textFixes }: Revised): CorrectedSize[] {
  return after.sizes.flatMap(({ id: size }) => {
    const counts = after.counts.filter(({ id }) => {
      const [was, becomes] = [before, after].map(({ grading }) => ownValue(ownValue(grading, id), size));
      const isRegraded = was !== undefined && becomes !== undefined && was !== becomes;
      return isRegraded || textFixes.some((fix) => fix.count === id && fix.size === size);
    });
    if (counts.length === 0) return [];
    const changed = new Set(counts.flatMap(({ id }) => measurementsOfCount(after, id)));
    return [{ size, measurements: after.measurements.flatMap(({ id }) => (changed.has(id) ? [id] : [])) }];
  });
}
