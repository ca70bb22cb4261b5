import { describe, expect, it } from "vitest";
import { findReplacements } from "@/engine/places";
import { applicant, applicantsDocument } from "../../factories/applicants";

describe("a spot that became open", () => {
  it("is offered to the waiting list by fit, and among equals to the earlier applicant", () => {
    const document = applicantsDocument({
      applicants: [
        applicant("near", 100, { prefers: ["medium"] }),
        applicant("exact", 98, { accepts: ["medium"] }),
        applicant("as-near", 100),
        applicant("stands", 98),
        applicant("excluded", 98, { excluded: true }),
        applicant("refuses", 97, { accepts: ["small"] }),
        applicant("far", 109),
      ],
    });
    const waiting = ["far", "refuses", "excluded", "as-near", "exact", "near"];
    const { successors, nearest } = findReplacements({ document, size: "medium", waiting });
    expect(successors).toMatchObject([
      {
        applicant: "exact",
        misfit: 0,
        why: "Best fit for this size on the waiting list. Their bust is the size's.",
        reason: { isFirstChoice: false },
      },
      { applicant: "near", why: "Their bust is 2 cm above the size's.", reason: { isFirstChoice: true } },
      { applicant: "as-near", why: "Their bust is 2 cm above the size's." },
    ]);
    expect(nearest.map(({ applicant: id, why }) => `${id}: ${why}`)).toEqual([
      "refuses: Their bust is 1 cm below the size's. They do not accept this size.",
      "far: Their bust is 11 cm above the size's, 1 cm out of reach.",
    ]);
  });

  it("has nobody where nobody waits", () => {
    expect(findReplacements({ document: applicantsDocument(), size: "small", waiting: [] })).toEqual({
      successors: [],
      nearest: [],
    });
  });
});
