import {
  solveIntegerProgram,
  type Constraint,
  type IntegerProgram,
  type Solver,
  type Sum,
} from "@/engine/integer-program";
import { ownValue, type ApplicantsDocument } from "@/engine/pattern";
import { fitInSize, type PlacesObjective } from "@/engine/places";

interface Pair {
  readonly applicant: number;
  readonly size: string;
  readonly misfit: number;
}

/**
 * The assignment as one integer program, for comparison: a variable for each applicant and each size open to
 * them, and one per size for the spots up to its `least`; solved for one objective after another.
 *
 * @param document without locks and exclusions.
 * @returns null where the solver stopped before it was done.
 */
export function solvePlaces(document: ApplicantsDocument, solver: Solver): PlacesObjective | null {
  const pairs = openPairs(document);
  const sizes = document.pattern.sizes.map(({ id }) => id);
  const placed: Sum = pairs.map((_, variable) => ({ variable, weight: 1 }));
  const least: Sum = sizes.map((_, size) => ({ variable: pairs.length + size, weight: 1 }));
  const misfit: Sum = pairs.map((pair, variable) => ({ variable, weight: pair.misfit }));
  let program: IntegerProgram = {
    whole: [...pairs, ...sizes].map(() => true),
    constraints: placeConstraints(document, pairs),
    objective: [],
  };
  const results: number[] = [];
  for (const aim of [negative(least), negative(placed), misfit]) {
    const solved = solveIntegerProgram({ ...program, objective: aim }, solver);
    if (solved.status !== "optimal") return null;
    results.push(solved.objective);
    program = {
      ...program,
      constraints: [...program.constraints, { sum: aim, relation: "<=", right: solved.objective }],
    };
  }
  const [leastFilled = Number.NaN, filled = Number.NaN, total = Number.NaN] = results;
  return { leastFilled: -leastFilled, filled: -filled, misfit: total };
}

function openPairs(document: ApplicantsDocument): Pair[] {
  return document.applicants.flatMap((applicant, index) =>
    document.pattern.sizes.flatMap(({ id: size }) => {
      const { isWithinReach, isAccepted, misfit } = fitInSize({ document, applicant, size });
      return isWithinReach && isAccepted ? [{ applicant: index, size, misfit }] : [];
    }),
  );
}

function placeConstraints({ pattern, places, applicants }: ApplicantsDocument, pairs: readonly Pair[]): Constraint[] {
  const ofApplicant = applicants.map((): { variable: number; weight: number }[] => []);
  const ofSize = new Map(pattern.sizes.map(({ id }) => [id, [] as { variable: number; weight: number }[]]));
  pairs.forEach(({ applicant, size }, variable) => {
    ofApplicant[applicant]?.push({ variable, weight: 1 });
    ofSize.get(size)?.push({ variable, weight: 1 });
  });
  return [
    ...ofApplicant.filter((sum) => sum.length > 0).map((sum): Constraint => ({ sum, relation: "<=", right: 1 })),
    ...pattern.sizes.flatMap(({ id }, index): Constraint[] => {
      const { least, wanted } = ownValue(places, id) ?? { least: 0, wanted: 0 };
      const filled = ofSize.get(id) ?? [];
      const leastFilled = { variable: pairs.length + index, weight: 1 };
      return [
        ...(filled.length > 0 ? [{ sum: filled, relation: "<=" as const, right: wanted }] : []),
        { sum: [leastFilled], relation: "<=", right: least },
        { sum: [leastFilled, ...negative(filled)], relation: "<=", right: 0 },
      ];
    }),
  ];
}

function negative(sum: Sum): { readonly variable: number; readonly weight: number }[] {
  return sum.map(({ variable, weight }) => ({ variable, weight: -weight }));
}
