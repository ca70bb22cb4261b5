import { expect, it } from "vitest";
import { farMoveWords } from "../../../../src/features/recruiting/places/far-move";
import type { PlacingRows } from "../../../../src/features/recruiting/places/data";
import { applicantsDocument } from "../../../factories/applicants";
import { listingDocument } from "../../../factories/listing";

function rows(bust: number | null): Pick<PlacingRows, "pattern" | "listing" | "applicants"> {
  const said = { accepts: null, prefers: [] as string[], forAnother: false, yarn: "", tool: "", unit: "cm" } as const;
  return {
    pattern: applicantsDocument().pattern,
    listing: listingDocument(),
    applicants: [
      {
        ...{ applicationId: "a", code: "a", name: "Ann", decision: "yes", size: null, pin: null, record: null },
        body: bust === null ? null : { bust },
        said: { ...said, terms: "us", timeZone: null, experience: "some", handle: "", pastWork: "" },
      },
    ],
  };
}

const words = (bust: number | null, size: string) => farMoveWords(rows(bust), { applicationId: "a", size }, "cm");

it("warns of a size two sizes away, and says how far and what it means", () => {
  // S, M and L are 90, 98 and 108 cm: 92 is nearest to S.
  expect(words(92, "large")).toBe(
    "L is 2 sizes away from S, the nearest to Ann: bust 16.0 cm below, 6.0 cm out of reach. It won’t have the ease that the pattern plans, so what they say about the fit tells little about L. The measurements of the garment count all the same.",
  );
});

it("warns of the nearest size where it is out of reach", () => {
  // Half the distance to the neighbour is 5 cm, so that L reaches to 118 cm.
  expect(words(125, "large")).toMatch(
    /^Ann is nearest to L, but far from it: bust 17\.0 cm above, 7\.0 cm out of reach/,
  );
});

it("says nothing of a neighbouring size within reach, nor where the body is not known", () => {
  expect(words(98, "large")).toBeNull();
  expect(words(92, "small")).toBeNull();
  expect(words(null, "large")).toBeNull();
});
