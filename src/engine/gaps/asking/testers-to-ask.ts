import { at, cholesky, squareProduct } from "../../linear-algebra";
import type { PatternDocument } from "../../pattern";
import type { ToLearn } from "../../variance-components";
import type { NextQuestion } from "../gaps-output";
import { expectedSettled, type KnownCells } from "./expected-settled";

/**
 * What one more tester of each size would settle.
 *
 * @param perTester by size, the information that one tester's readings add about its cells.
 * @param chanceReported that a tester measures what they are asked to.
 */
export function testersToAsk(given: {
  readonly pattern: PatternDocument;
  readonly known: KnownCells;
  readonly perTester: readonly Float64Array[];
  readonly chanceReported: number;
}): NextQuestion[] {
  const { pattern, known, perTester, chanceReported } = given;
  return pattern.sizes.flatMap(({ id }, size): NextQuestion[] => {
    const toLearn = readingsOfTester(size, perTester[size], known);
    return toLearn === null
      ? []
      : [{ action: "tester", size: id, settles: chanceReported * expectedSettled(known, toLearn) }];
  });
}

/** Information R·Rᵀ about cells c is what numbers Rᵀc, each with an error of variance 1, would bring. */
function readingsOfTester(group: number, information: Float64Array | undefined, { joint }: KnownCells): ToLearn | null {
  const covarianceNow = joint.groups[group]?.covariance;
  const cells = joint.groups[group]?.mean.length ?? 0;
  if (information === undefined || covarianceNow === undefined) return null;
  const root = cholesky({ rows: cells, columns: cells, values: information });
  if (root === null) return null;
  const loads = root.values;
  const moved = squareProduct(covarianceNow, loads, cells);
  const covariance = new Float64Array(cells * cells);
  for (let k = 0; k < cells; k += 1) {
    for (let l = 0; l < cells; l += 1) {
      let value = k === l ? 1 : 0;
      for (let j = k; j < cells; j += 1) value += at(loads, j * cells + k) * at(moved, j * cells + l);
      covariance[k * cells + l] = value;
    }
  }
  return { group, loads, covariance };
}
