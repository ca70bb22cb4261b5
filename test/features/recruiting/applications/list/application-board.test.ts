import { describe, expect, it } from "vitest";
import {
  applicationBoard,
  boardCounts,
  chosenApplications,
} from "../../../../../src/features/recruiting/applications/list/application-board";
import { countWords } from "../../../../../src/features/recruiting/applications/list/count-copy";
import type { CallApplication } from "../../../../../src/features/recruiting/applications/data";
import {
  differenceWords,
  fitSentence,
  wishWords,
} from "../../../../../src/features/recruiting/applications/list/fit-copy";
import { listAddress, listQuerySchema } from "../../../../../src/features/recruiting/applications/list/list-query";
import { patternDocument } from "../../../../factories/pattern";

const pattern = patternDocument({
  sizes: [
    { id: "small", label: "S", body: { bust: 90 } },
    { id: "medium", label: "M", body: { bust: 100 } },
    { id: "large", label: "L", body: { bust: 110 } },
  ],
});
const wanted = { least: 1, wanted: 2 };
const BOARD = { pattern, places: { small: wanted, medium: wanted, large: wanted }, fitBy: ["bust"] };

function applicant(id: string, bust: number | null, change: Partial<CallApplication> = {}): CallApplication {
  return {
    ...{ applicationId: id, position: 0, name: id, email: `${id}@example.org`, typed: {} },
    ...{ createdAt: new Date(0), withdrawnAt: null, decision: null, size: null, pin: null, agreementVersion: 1 },
    measurements: bust === null ? null : { bust },
    document: {
      ...{ accepts: null, prefers: [], forAnother: false, yarn: "", tool: "", unit: "cm", terms: "us" },
      ...{ timeZone: null, experience: "first", handle: "", pastWork: "" },
    },
    tester: null,
    ...change,
  };
}

const query = listQuerySchema.parse({});

describe("the list of applications", () => {
  // Half the way to the next size is 5 cm, and reach is twice that: 10 cm on either side of 90, 100 and 110.
  const maja = applicant("maja", 97, { decision: "yes" });
  const rosa = applicant("rosa", 119, { decision: "no" });
  const kim = applicant("kim", 130);
  const gone = applicant("gone", null, { decision: "yes", withdrawnAt: new Date(0) });
  const board = applicationBoard([maja, rosa, kim, gone], BOARD);
  const sentences = Object.fromEntries(board.map((one) => [one.name, fitSentence(one)]));

  it("says each body's fit in words, the newest first", () => {
    expect(board.map(({ name }) => name)).toEqual(["gone", "kim", "rosa", "maja"]);
    expect(sentences).toEqual({
      gone: "",
      kim: "Nearest size L, but none of the sizes with spots fits.",
      rosa: "Nearest size L.",
      maja: "Nearest size M. S fits too.",
    });
    const [fit] = board.at(-1)?.fits ?? [];
    expect(fit && differenceWords(fit, { pattern, unit: "cm" })).toBe("bust 7.0 cm larger");
  });

  it("says if no size that fits was ticked", () => {
    const document = { ...maja.document, accepts: ["large"], prefers: ["large"] };
    const [picky] = applicationBoard([{ ...maja, document }], BOARD);
    expect(picky && fitSentence(picky)).toBe("Nearest size M. S fits too. They ticked none of these.");
    expect(picky && wishWords(picky, pattern)).toBe("L; prefers L");
  });

  it("counts by decision, by size that fits and at the largest sizes; withdrawn ones count only as withdrawn", () => {
    const counts = boardCounts(board, BOARD);
    expect(counts.byDecision).toEqual({ all: 3, yes: 1, maybe: 0, no: 1, undecided: 1, withdrawn: 1 });
    expect(counts.bySize.map(({ label, count }) => `${label} ${count}`)).toEqual(["S 1", "M 1", "L 1"]);
    expect(countWords(counts)).toBe("3 applied: 1 yes, 1 no, 1 to decide. 1 withdrew. 2 are nearest to L or larger.");
  });

  it("is filtered by decision and by size that fits", () => {
    const names = (asked: object) => chosenApplications(board, { ...query, ...asked }).map(({ name }) => name);
    expect(names({})).toEqual(["kim", "rosa", "maja"]);
    expect(names({ decision: "yes" })).toEqual(["maja"]);
    expect(names({ decision: "withdrawn" })).toEqual(["gone"]);
    expect(names({ size: "large" })).toEqual(["rosa"]);
  });

  it("has no fits if a deciding measurement is missing, or no size has spots", () => {
    expect(applicationBoard([maja], { ...BOARD, fitBy: ["bust", "hip"] })[0]?.nearest).toBeNull();
    expect(applicationBoard([maja], { ...BOARD, places: {} })[0]?.fits).toEqual([]);
  });
});

describe("the query of a list", () => {
  it("is read from its address, and written there again", () => {
    const asked = listQuerySchema.parse({ decision: "yes", size: "large", page: "2" });
    expect(listAddress("c", asked)).toBe("/calls/c/applications?decision=yes&size=large&page=2");
    expect(listAddress("c", asked, "a")).toBe("/calls/c/applications/a?decision=yes&size=large");
  });

  it("ignores nonsense", () => {
    expect(listQuerySchema.parse({ decision: ["x"], page: "-1" })).toEqual({
      decision: "all",
      size: undefined,
      page: 1,
    });
  });
});
