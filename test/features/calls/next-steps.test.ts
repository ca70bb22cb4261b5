import { describe, expect, it } from "vitest";
import { nextSteps, waitsFor } from "@/features/calls/next-steps";
import type { CallStanding } from "@/features/calls/standing-data";

const BEGUN: CallStanding = {
  listing: "taking",
  ...{ isOpen: true, isNoticeMissing: false, applied: 0, undecided: 0, unplaced: 0, placed: 0 },
  ...{ invited: 0, unanswered: 0, lapsed: 0, accepted: 0, reported: 0, questions: 0, flagged: 0, off: 0 },
};

describe("what comes next in a call", () => {
  it("is said in the order in which a call goes, each with the page where it is done", () => {
    const steps = nextSteps({
      ...BEGUN,
      isNoticeMissing: true,
      undecided: 1,
      unplaced: 2,
      placed: 3,
      lapsed: 1,
      questions: 4,
      flagged: 2,
      off: 1,
    });
    expect(steps.map(({ page, message }) => `${page}: ${message}`)).toEqual([
      "setUp: The privacy notice is not complete. Testers read there who is responsible for their data.",
      "applications: 1 application needs your decision.",
      "sizes: 2 people you accepted have no size yet.",
      "sizes: 3 people have a size and are not invited yet.",
      "progress: 1 invitation ended without an answer.",
      "questions: 4 questions wait for your answer.",
      "mistakes: 2 numbers may be mistakes.",
      "differences: 1 measurement came out different from the pattern.",
    ]);
    expect(nextSteps({ ...BEGUN, listing: "draft" }).map(({ page }) => page)).toEqual(["setUp"]);
  });

  it("is nothing where others are to act, and then it says whom the call waits for", () => {
    expect(nextSteps(BEGUN)).toEqual([]);
    expect(waitsFor(BEGUN)).toMatch(/^Nobody has applied yet/);
    expect(waitsFor({ ...BEGUN, applied: 5, invited: 3, unanswered: 2, accepted: 1 })).toMatch(/^2 people are invited/);
    expect(waitsFor({ ...BEGUN, applied: 5, invited: 3, accepted: 3, reported: 1 })).toMatch(
      /^2 of 3 people have not reported/,
    );
    expect(waitsFor({ ...BEGUN, applied: 5, invited: 3, accepted: 3, reported: 3 })).toMatch(/^Everyone who accepted/);
  });

  it("is nothing in a closed call", () => {
    const closed = { ...BEGUN, isOpen: false, undecided: 3, questions: 1 };
    expect(nextSteps(closed)).toEqual([]);
    expect(waitsFor(closed)).toMatch(/^This test is closed/);
  });
});
