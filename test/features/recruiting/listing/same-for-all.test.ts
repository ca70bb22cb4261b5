import { expect, it } from "vitest";
import {
  commonSpots,
  faultsOfAll,
  spreadOverSizes,
  USUAL_SPOTS,
} from "../../../../src/features/recruiting/listing/same-for-all";
import { usualInvitations } from "../../../../src/features/recruiting/listing/usual-invitations";
import { patternDocument } from "../../../factories/pattern";

const pattern = patternDocument();
const OF_ALL = { leastOfAll: "1", wantedOfAll: "3", mostOfAll: "4" };

it("puts the numbers of the one box into every size, where the box is ticked", () => {
  const own = { "least.small": "0", "wanted.small": "9" };
  expect(spreadOverSizes({ ...OF_ALL, ...own, sameForAll: "on" }, pattern)).toMatchObject({
    ...{ "least.small": "1", "wanted.small": "3", "least.large": "1", "wanted.large": "3" },
    ...{ "most.small": "4", "most.large": "4" },
  });
  expect(spreadOverSizes({ ...OF_ALL, ...own }, pattern)).toEqual({ ...OF_ALL, ...own });
});

it("shows one box where all sizes are alike, and each size where they differ or are empty", () => {
  const small = { "least.small": "1", "wanted.small": "2", "most.small": "3" };
  const alike = { ...small, "least.large": "1", "wanted.large": "2", "most.large": "3" };
  expect(commonSpots(alike, pattern.sizes)).toEqual({ least: "1", wanted: "2", most: "3" });
  expect(commonSpots({ ...alike, "most.large": "2" }, pattern.sizes)).toBeNull();
  expect(commonSpots({ ...alike, "wanted.large": "3" }, pattern.sizes)).toBeNull();
  expect(commonSpots({}, pattern.sizes)).toBeNull();
});

it("tells what is wrong once, at the box", () => {
  const fault = (field: string) => ({ field, message: "No number.", isMissing: false });
  expect(faultsOfAll([fault("wanted.small"), fault("wanted.large"), fault("title")], pattern)).toEqual([
    fault("wantedOfAll"),
    fault("title"),
  ]);
});

it("starts with as many spots as one report takes in spite of drop-outs, and at most 3", () => {
  expect(USUAL_SPOTS.wanted).toBe(usualInvitations(USUAL_SPOTS.least));
  expect(USUAL_SPOTS.most).toBe(3);
});
