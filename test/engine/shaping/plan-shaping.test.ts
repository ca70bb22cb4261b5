import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planShaping, shapingText, type SectionCounts, type Shaping } from "@/engine/shaping";

const RUNS = 2000;

function plan(counts: SectionCounts, shaping?: Shaping) {
  const outcome = planShaping(counts, shaping);
  if (outcome.status !== "planned") throw new Error(JSON.stringify(outcome));
  return outcome.plan;
}

const EACH_SIDE: Shaping = { stitches: 1, edges: "both" };

describe("a shaping plan, worked by hand", () => {
  it("has two neighbouring intervals, the longer first", () => {
    // 96 − 70 = 26 stitches, 2 at a time: 13 events. 62 ÷ 13 = 4, 10 left over: 10 intervals of 5 and 3 of 4.
    // 10 × 5 + 3 × 4 = 62.
    expect(plan({ from: 96, to: 70, rows: 62 }, EACH_SIDE)).toEqual({
      change: "decrease",
      events: 13,
      intervals: [
        { everyRows: 5, times: 10 },
        { everyRows: 4, times: 3 },
      ],
      evenRows: 0,
    });
  });

  it("has even intervals where only every other row may shape: every 6th row 5 times, then every 4th row 8 times", () => {
    // 13 events as above; 62 rows are 31 pairs. 31 ÷ 13 = 2, 5 left over: 5 intervals of 3 pairs and 8 of 2 pairs.
    // 5 × 6 + 8 × 4 = 62.
    expect(plan({ from: 96, to: 70, rows: 62 }, { ...EACH_SIDE, everyOther: true })).toMatchObject({
      intervals: [
        { everyRows: 6, times: 5 },
        { everyRows: 4, times: 8 },
      ],
      evenRows: 0,
    });
  });

  it("works an odd row even at the end where only every other row may shape", () => {
    // 10 − 4 = 6 at one edge: 6 events. 25 rows are 12 pairs and 1 row: 6 intervals of 2 pairs; 6 × 4 + 1 = 25.
    expect(plan({ from: 4, to: 10, rows: 25 }, { stitches: 1, edges: "left", everyOther: true })).toEqual({
      change: "increase",
      events: 6,
      intervals: [{ everyRows: 4, times: 6 }],
      evenRows: 1,
    });
  });

  it("counts the stitches of an event by its edges", () => {
    // 40 − 28 = 12: 3 stitches each side are 6 at a time, 2 events; at one edge 3 at a time, 4 events.
    expect(plan({ from: 40, to: 28, rows: 20 }, { stitches: 3, edges: "both" }).events).toBe(2);
    expect(plan({ from: 40, to: 28, rows: 20 }, { stitches: 3, edges: "right" }).events).toBe(4);
  });

  it("is worked even where nothing changes, with or without shaping", () => {
    const even = { change: "even", events: 0, intervals: [], evenRows: 30 };
    expect(plan({ from: 50, to: 50, rows: 30 }, EACH_SIDE)).toEqual(even);
    expect(plan({ from: 50, to: 50, rows: 30 })).toEqual(even);
  });
});

describe("what cannot be planned", () => {
  it.each([
    // 11 stitches do not go by twos.
    [{ from: 72, to: 61, rows: 50 }, EACH_SIDE, { kind: "not-a-multiple", stitchesPerEvent: 2 }],
    // 20 ÷ 2 = 10 events, one row too many.
    [{ from: 80, to: 60, rows: 9 }, EACH_SIDE, { kind: "no-room", events: 10, maxEvents: 9 }],
    // 19 rows hold 9 rows that may shape.
    [
      { from: 80, to: 60, rows: 19 },
      { ...EACH_SIDE, everyOther: true },
      { kind: "no-room", events: 10, maxEvents: 9 },
    ],
    [{ from: 80, to: 60, rows: 0 }, EACH_SIDE, { kind: "no-rows" }],
    [{ from: 80, to: 60, rows: 0 }, undefined, { kind: "no-rows" }],
  ])("is a fault: %j", (counts, shaping, fault) => {
    expect(planShaping(counts, shaping)).toEqual({ status: "fault", fault });
  });

  it("is unsaid where stitches change and nobody says how", () => {
    expect(planShaping({ from: 72, to: 62, rows: 57 })).toEqual({ status: "unsaid" });
  });

  it("fits when every row, or every other row, shapes", () => {
    expect(plan({ from: 80, to: 60, rows: 10 }, EACH_SIDE).intervals).toEqual([{ everyRows: 1, times: 10 }]);
    expect(plan({ from: 80, to: 60, rows: 20 }, { ...EACH_SIDE, everyOther: true }).intervals).toEqual([
      { everyRows: 2, times: 10 },
    ]);
  });
});

/** The words for counts and shaping. */
function said(counts: SectionCounts, shaping?: Shaping, noun: "row" | "round" = "row"): string {
  return shapingText(planShaping(counts, shaping), { counts, shaping, noun });
}

describe("a shaping plan as text", () => {
  it.each([
    [
      said({ from: 96, to: 70, rows: 62 }, { ...EACH_SIDE, everyOther: true }),
      "Decrease 1 stitch each side every 6th row 5 times, then every 4th row 8 times.",
    ],
    [
      said({ from: 4, to: 10, rows: 25 }, { stitches: 1, edges: "left", everyOther: true }),
      "Increase 1 stitch at the left edge every 4th row 6 times. Then work 1 row even.",
    ],
    [
      said({ from: 20, to: 8, rows: 5 }, { stitches: 2, edges: "both" }, "round"),
      "Decrease 2 stitches each side every other round twice, then every round once.",
    ],
    [said({ from: 20, to: 18, rows: 21 }, EACH_SIDE), "Decrease 1 stitch each side in the 21st row."],
    [said({ from: 20, to: 20, rows: 57 }), "Work 57 rows even."],
    [said({ from: 20, to: 20, rows: 1 }, undefined, "round"), "Work 1 round even."],
    [said({ from: 20, to: 20, rows: 0 }), "Not worked in this size."],
  ])("%s", (words, wanted) => {
    expect(words).toBe(wanted);
  });

  it("says what is wrong and what to do", () => {
    expect(said({ from: 72, to: 62, rows: 57 })).toBe(
      "It goes from 72 to 62 stitches, but its shaping is not specified. Enter how many stitches at a time, and at which edges.",
    );
    expect(said({ from: 72, to: 61, rows: 50 }, EACH_SIDE)).toBe(
      "From 72 to 61 stitches is 11 fewer, and 2 go at a time. Make the difference a multiple of 2, or shape another number of stitches at a time.",
    );
    expect(said({ from: 60, to: 80, rows: 19 }, { ...EACH_SIDE, everyOther: true }, "round")).toBe(
      "From 60 to 80 stitches takes 10 shaping rounds, and 19 rounds with shaping in every other one have room for 9. Give it more rounds, or shape more stitches at a time.",
    );
    expect(said({ from: 80, to: 60, rows: 0 }, EACH_SIDE)).toBe(
      "It goes from 80 to 60 stitches, and has no rows to do it in. Give it rows, or as many stitches at its end as at its start.",
    );
  });
});

const randomSection = fc.record({
  counts: fc.record({ from: fc.nat(200), to: fc.nat(200), rows: fc.nat(150) }),
  shaping: fc.record({
    stitches: fc.integer({ min: 1, max: 4 }),
    edges: fc.constantFrom("both", "left", "right"),
    everyOther: fc.boolean(),
  }) satisfies fc.Arbitrary<Shaping>,
});

it("adds up exactly in every random section, and never shapes outside its rows", () => {
  const ran = { even: 0, shaped: 0, refused: 0 };
  fc.assert(
    fc.property(randomSection, ({ counts, shaping }) => {
      const outcome = planShaping(counts, shaping);
      const stitchesPerEvent = shaping.stitches * (shaping.edges === "both" ? 2 : 1);
      const difference = Math.abs(counts.to - counts.from);
      if (outcome.status !== "planned") {
        ran.refused += 1;
        // Refused only where it cannot be: the difference is no multiple, or there are more events than rows that may shape.
        const mayShape = Math.floor(counts.rows / (shaping.everyOther ? 2 : 1));
        expect(difference % stitchesPerEvent !== 0 || difference / stitchesPerEvent > mayShape).toBe(true);
        return;
      }
      const { events, intervals, evenRows } = outcome.plan;
      ran[events === 0 ? "even" : "shaped"] += 1;
      expect(events * stitchesPerEvent).toBe(difference);
      expect(intervals.reduce((sum, { times }) => sum + times, 0)).toBe(events);
      expect(intervals.reduce((sum, { everyRows, times }) => sum + everyRows * times, evenRows)).toBe(counts.rows);
      const [longer, shorter] = intervals;
      if (longer && shorter) expect(longer.everyRows - shorter.everyRows).toBe(shaping.everyOther ? 2 : 1);
      if (shaping.everyOther) expect(intervals.every(({ everyRows }) => everyRows % 2 === 0)).toBe(true);
      // Each event has a row of its own within the section: intervals of one row or more, in all no more than its rows.
      expect(intervals.every(({ everyRows, times }) => everyRows >= 1 && times >= 1)).toBe(true);
      expect(evenRows).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: RUNS },
  );
  expect(ran.even + ran.shaped + ran.refused).toBe(RUNS);
  expect(ran.shaped).toBeGreaterThan(RUNS / 20);
  expect(ran.refused).toBeGreaterThan(RUNS / 20);
});
