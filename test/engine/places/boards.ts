import fc from "fast-check";
import { APPLICANTS_FORMAT, type ApplicantsDocument } from "@/engine/pattern";
import type { Applicant } from "@/engine/places";
import { patternDocument } from "../../factories/pattern";

const SIZES = ["one", "two", "three", "four"];

/** Bodies on a grid of whole centimetres, so that equal bodies and equal sums are common. */
const bodies = { bust: upTo(102, 86), arm: upTo(32, 27) };

function applicants(sizes: readonly string[], max: number) {
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
  return upTo(max, 0)
    .chain((length) => fc.array(one, { minLength: length, maxLength: length }))
    .map((all) =>
      all.map<Applicant>(({ locked, excluded, ...rest }, index) => ({
        id: `a-${index}`,
        ...rest,
        ...(excluded ? { excluded } : { locked }),
      })),
    );
}

/** Boards of up to `maxSizes` sizes and `max` applicants. */
export function boards({ maxSizes, max }: { readonly maxSizes: number; readonly max: number }) {
  return upTo(maxSizes, 1).chain((count) => {
    const sizes = SIZES.slice(0, count);
    const places = fc
      .constantFrom(0, 1, 1, 2, 2, 3)
      .chain((wanted) =>
        fc.record({ wanted: fc.constant(wanted), least: fc.nat(wanted), most: fc.constantFrom(wanted, wanted + 1) }),
      );
    return fc
      .record({
        steps: fc.array(fc.record({ bust: upTo(9, 4), arm: fc.constantFrom(0, 2, 3, 4) }), {
          minLength: count,
          maxLength: count,
        }),
        places: fc.array(fc.option(places, { freq: 9, nil: undefined }), { minLength: count, maxLength: count }),
        fitBy: fc.constantFrom(["bust"], ["bust"], ["bust", "arm"], ["bust", "arm"], []),
        applicants: applicants(sizes, max),
      })
      .map((board) => documentOf(sizes, board));
  });
}

/** Any of these numbers as often as another, where `fc.integer` favours its ends. */
function upTo(max: number, min: number): fc.Arbitrary<number> {
  return fc.constantFrom(...Array.from({ length: max - min + 1 }, (_, index) => min + index));
}

function documentOf(
  ids: readonly string[],
  board: {
    readonly steps: readonly { readonly bust: number; readonly arm: number }[];
    readonly places: readonly (ApplicantsDocument["places"][string] | undefined)[];
  } & Pick<ApplicantsDocument, "fitBy" | "applicants">,
): ApplicantsDocument {
  const sum = (index: number, key: "bust" | "arm") =>
    board.steps.slice(0, index).reduce((total, step) => total + step[key], 0);
  const sizes = ids.map((id, index) => ({
    id,
    label: id.toUpperCase(),
    body: { bust: 90 + sum(index, "bust"), arm: 28 + sum(index, "arm") },
  }));
  return {
    format: APPLICANTS_FORMAT,
    pattern: patternDocument({ sizes, grading: undefined, counts: [], measurements: [] }),
    places: Object.fromEntries(ids.flatMap((id, index) => (board.places[index] ? [[id, board.places[index]]] : []))),
    fitBy: board.fitBy,
    applicants: board.applicants,
  };
}
