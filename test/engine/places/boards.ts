import fc from "fast-check";
import { APPLICANTS_FORMAT, type ApplicantsDocument } from "@/engine/pattern";
import type { Applicant } from "@/engine/places";
import { patternDocument } from "../../factories/pattern";

const SIZES = ["one", "two", "three", "four"];

/** Bodies on a grid of whole centimetres, so that equal bodies and equal sums are common. */
const bodies = { bust: fc.integer({ min: 84, max: 110 }), arm: fc.integer({ min: 26, max: 36 }) };

function applicants(sizes: readonly string[], most: number) {
  const some = fc.subarray([...sizes]);
  const ordered = fc.shuffledSubarray([...sizes]);
  const rarely = <Value>(value: fc.Arbitrary<Value>, weight: number) =>
    fc.oneof({ weight: 10 - weight, arbitrary: fc.constant(undefined) }, { weight, arbitrary: value });
  const one = fc.record({
    body: fc.record(bodies),
    accepts: rarely(some, 3),
    prefers: rarely(ordered, 3),
    record: rarely(fc.record({ finished: fc.nat(4), dropped: fc.nat(4) }), 2),
    locked: rarely(fc.constantFrom(...sizes), 1),
    excluded: rarely(fc.boolean(), 1),
  });
  return fc.array(one, { maxLength: most }).map((all) =>
    all.map<Applicant>(({ locked, excluded, ...rest }, at) => ({
      id: `a-${at}`,
      ...rest,
      ...(excluded ? { excluded } : { locked }),
    })),
  );
}

/** Boards of up to `mostSizes` sizes and `most` applicants. */
export function boards({ mostSizes, most }: { readonly mostSizes: number; readonly most: number }) {
  return fc.integer({ min: 1, max: mostSizes }).chain((count) => {
    const sizes = SIZES.slice(0, count);
    const places = fc.nat(3).chain((wanted) => fc.record({ wanted: fc.constant(wanted), least: fc.nat(wanted) }));
    return fc
      .record({
        steps: fc.array(fc.record({ bust: fc.integer({ min: 4, max: 9 }), arm: fc.nat(3) }), {
          minLength: count,
          maxLength: count,
        }),
        places: fc.array(fc.option(places, { freq: 6, nil: undefined }), { minLength: count, maxLength: count }),
        fitBy: fc.constantFrom(["bust"], ["bust", "arm"], []),
        applicants: applicants(sizes, most),
      })
      .map((board) => documentOf(sizes, board));
  });
}

function documentOf(
  ids: readonly string[],
  board: {
    readonly steps: readonly { readonly bust: number; readonly arm: number }[];
    readonly places: readonly (ApplicantsDocument["places"][string] | undefined)[];
  } & Pick<ApplicantsDocument, "fitBy" | "applicants">,
): ApplicantsDocument {
  const sum = (at: number, key: "bust" | "arm") =>
    board.steps.slice(0, at).reduce((total, step) => total + step[key], 0);
  const sizes = ids.map((id, at) => ({
    id,
    label: id.toUpperCase(),
    body: { bust: 90 + sum(at, "bust"), arm: 28 + sum(at, "arm") },
  }));
  return {
    format: APPLICANTS_FORMAT,
    pattern: patternDocument({ sizes, grading: undefined, counts: [], measurements: [] }),
    places: Object.fromEntries(ids.flatMap((id, at) => (board.places[at] ? [[id, board.places[at]]] : []))),
    fitBy: board.fitBy,
    applicants: board.applicants,
  };
}
