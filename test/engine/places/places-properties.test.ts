import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import type { ApplicantsDocument } from "@/engine/pattern";
import { placeApplicants, type Applicant } from "@/engine/places";
import { boards } from "./boards";

const RUNS = 500;
const ran = { renamed: 0, added: 0, locked: 0, explained: 0 };

afterAll(() => {
  console.log("boards", ran);
  expect(Math.min(...Object.values(ran))).toBeGreaterThan(RUNS / 5);
});

const larger = boards({ maxSizes: 4, max: 14 });

function optimal(document: ApplicantsDocument) {
  const answer = placeApplicants(document);
  return answer.status === "optimal" ? answer : undefined;
}

describe("places, whatever the board", () => {
  it("places the same people at the same spots whatever the sizes are called", () => {
    fc.assert(
      fc.property(larger, (document) => {
        const one = optimal(document);
        const other = optimal(renamed(document));
        expect(other?.objective).toEqual(one?.objective);
        const spots = (answer: typeof one, name: (size: string) => string) =>
          answer?.placed.map(({ applicant, size, misfit }) => [applicant, name(size), misfit]);
        expect(spots(other, (size) => size)).toEqual(spots(one, newName));
        if (one !== undefined && one.placed.length > 0) ran.renamed += 1;
      }),
      { numRuns: RUNS },
    );
  }, 60_000);

  it("never fills fewer places because one more applies", () => {
    fc.assert(
      fc.property(larger, (document) => {
        const all = optimal(document);
        const fewer = optimal({ ...document, applicants: document.applicants.slice(0, -1) });
        if (all === undefined || fewer === undefined) return;
        expect(all.objective.leastFilled).toBeGreaterThanOrEqual(fewer.objective.leastFilled);
        expect(all.objective.filled).toBeGreaterThanOrEqual(fewer.objective.filled);
        ran.added += 1;
      }),
      { numRuns: RUNS },
    );
  }, 60_000);

  it("keeps locked applicants, and fills no size beyond its capacity", () => {
    fc.assert(
      fc.property(larger, (document) => {
        const answer = optimal(document);
        if (answer === undefined) return;
        for (const { id, locked } of document.applicants) {
          if (locked === undefined) continue;
          expect(answer.placed.find(({ applicant }) => applicant === id)?.size).toBe(locked);
          ran.locked += 1;
        }
        for (const { id } of document.pattern.sizes) {
          const here = answer.placed.filter(({ size }) => size === id).length;
          const locks = document.applicants.filter(({ locked }) => locked === id).length;
          expect(here).toBeLessThanOrEqual(Math.max(document.places[id]?.wanted ?? 0, locks));
          expect(here).toBeLessThanOrEqual(document.places[id]?.most ?? 0);
        }
      }),
      { numRuns: RUNS },
    );
  }, 60_000);

  it("tells everybody why, and says nothing that the board belies", () => {
    fc.assert(
      fc.property(larger, (document) => {
        const answer = optimal(document);
        if (answer === undefined) return;
        const { placed, waiting, short } = answer;
        expect([...placed, ...waiting].map(({ applicant }) => applicant).toSorted()).toEqual(
          document.applicants.map(({ id }) => id).toSorted(),
        );
        const here = (id: string) => placed.filter(({ size }) => size === id).length;
        const isFull = (id: string) => here(id) >= (document.places[id]?.wanted ?? 0);
        for (const { reason, size } of placed) {
          if (reason.kind !== "instead") continue;
          for (const passed of reason.passedOver) {
            expect(passed.because).toBe(isFull(passed.size) ? "full" : "needed");
            if (passed.because === "needed") expect(here(size)).toBeLessThanOrEqual(document.places[size]?.least ?? 0);
          }
        }
        for (const { reason } of waiting) if (reason.kind === "full") expect(reason.sizes.every(isFull)).toBe(true);
        for (const { nearest } of short) {
          expect(nearest.length).toBeLessThanOrEqual(3);
          for (const { reason } of nearest) expect(isHeld(reason)).toBe(true);
        }
        if (placed.length > 0 && waiting.length > 0) ran.explained += 1;
        expect([...placed, ...waiting].every(({ why }) => /^[A-Z].*\.$/.test(why))).toBe(true);
      }),
      { numRuns: RUNS },
    );
  }, 60_000);
});

/** Somebody who does not stand in a short size is held from it by something. */
function isHeld(reason: {
  isWithinReach: boolean;
  isAccepted: boolean;
  standsIn: { wouldBeShort: boolean; isLocked: boolean } | null;
}) {
  const { isWithinReach, isAccepted, standsIn } = reason;
  return !isWithinReach || !isAccepted || standsIn?.wouldBeShort || standsIn?.isLocked;
}

/** Names in another alphabetical order than the sizes'. */
const NAMES: Readonly<Record<string, string>> = { one: "z", two: "m", three: "constructor", four: "a" };

function newName(size: string): string {
  return NAMES[size] ?? size;
}

function renamed(document: ApplicantsDocument): ApplicantsDocument {
  const list = (sizes: readonly string[] | undefined) => sizes?.map(newName);
  return {
    ...document,
    pattern: {
      ...document.pattern,
      sizes: document.pattern.sizes.map((size) => ({ ...size, id: newName(size.id), label: newName(size.id) })),
    },
    places: Object.fromEntries(Object.entries(document.places).map(([id, places]) => [newName(id), places])),
    applicants: document.applicants.map<Applicant>(({ accepts, prefers, locked, ...rest }) => ({
      ...rest,
      accepts: list(accepts),
      prefers: list(prefers),
      locked: locked === undefined ? undefined : newName(locked),
    })),
  };
}
