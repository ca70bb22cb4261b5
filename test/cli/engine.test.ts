import { describe, expect, it } from "vitest";
import { callDocument, reader } from "../factories/call";
import { garmentPattern } from "../factories/garment-pattern";
import { patternDocument } from "../factories/pattern";
import { bundledEngine, typedEngine } from "./run-engine";

const engine = await bundledEngine();

describe("the headless engine", () => {
  it("prints the gaps of a call on standard input, and nothing else", () => {
    const { status, output, errors } = typedEngine(
      ["gaps", "-"],
      JSON.stringify(callDocument([reader("a", { bust: 104 })])),
    );
    expect(errors).toBe("");
    expect(status).toBe(0);
    expect(JSON.parse(output)).toMatchObject({
      cells: [{ size: "small", measurement: "bust", reports: 1 }, {}, {}, {}],
      steps: [{ tester: "a", measurement: "bust", gapCm: 4 }],
    });
  });

  it("prints what a size should come to", () => {
    const { status, output } = engine(["predict", "-"], JSON.stringify({ pattern: patternDocument(), size: "large" }));
    expect(status).toBe(0);
    expect(JSON.parse(output)).toMatchObject({
      measurements: [{ measurement: "bust", designCm: 120 }, { designCm: 44 }],
    });
  });

  it("grades a pattern, and exits with 3 and one conflict if no grading meets its rules", () => {
    const pattern = patternDocument({
      grading: { width: { small: 1, large: 1 }, height: { small: 100, large: 110 } },
    });
    const graded = engine(["grade", "-"], JSON.stringify(pattern));
    expect(graded.errors).toBe("");
    expect(graded.status).toBe(0);
    expect(JSON.parse(graded.output)).toMatchObject({
      grading: { width: { small: 98, large: 118 }, height: { small: 100, large: 110 } },
      measurements: [{ measurement: "bust", size: "small", targetCm: 100, cm: 100, deviation: 0 }, {}, {}, {}],
      objective: { beyond: 0, deviation: 0, unevenness: 0, sum: 426 },
      status: "optimal",
    });
    const [width, height] = pattern.counts;
    const locked = { ...width, repeat: { of: 10, plus: 0 }, locked: { small: 97 } };
    const frontier = engine(["grade", "-"], JSON.stringify({ pattern, frontier: true }));
    expect(JSON.parse(frontier.output)).toMatchObject({
      frontier: [{ grading: JSON.parse(graded.output).grading, unevenness: 0 }],
      status: "optimal",
    });
    const both = engine(["grade", "-"], JSON.stringify({ pattern, frontier: true, slack: 0 }));
    expect(both.errors).toContain("frontier: takes neither “slack” nor “near”.");
    const clash = engine(["grade", "-"], JSON.stringify({ pattern: { ...pattern, counts: [locked, height] } }));
    expect(clash.status).toBe(3);
    expect(JSON.parse(clash.output)).toMatchObject({
      status: "infeasible",
      clash: [{ rule: "repeat", count: "width", size: "small" }, { rule: "locked" }],
    });
  }, 60_000);

  it("prints what a pasted table says, and refuses one that is too large", () => {
    const text = "Size;S;M\nA. Bust (in);36;38 1/2\nStitches;16o;170";
    const { status, output, errors } = engine(["read-measurements", "-"], JSON.stringify({ text }));
    expect(errors).toBe("");
    expect(status).toBe(0);
    expect(JSON.parse(output)).toMatchObject({
      ...{ unit: "in", sizes: ["S", "M"], bodies: [], gauge: null },
      rows: [{ label: "Bust", letter: "A", cm: [36 * 2.54, 38.5 * 2.54] }],
      counts: [{ label: "Stitches", direction: "stitches", values: [null, 170] }],
      unread: [{ row: 3, column: 2, text: "16o" }],
    });
    const large = engine(["read-measurements", "-"], JSON.stringify({ text: "1\t2\n".repeat(301) }));
    expect(large.status).toBe(2);
    expect(large.output).toBe("");
    expect(large.errors).toMatch(/^text: This table has 301 rows and 2 columns; at most 300 rows/);
  });

  it("prints the rows and the outline of a piece, and what cannot be worked in it", () => {
    const pattern = garmentPattern({
      pieces: [{ id: "scarf" }],
      steps: [
        { in: "scarf", do: "start", how: "cast-on", stitches: 40, worked: "flat" },
        { in: "scarf", do: "work", rows: 2 },
        { id: "slit", in: "scarf", do: "bind-off", at: "centre", each: 4 },
        { in: "scarf", do: "end", how: "bind-off", edge: "top" },
      ],
    });
    const { status, output, errors } = engine(["outline", "-"], JSON.stringify({ pattern, size: "small" }));
    expect(errors).toBe("");
    expect(status).toBe(0);
    const row = { onNeedle: [40], spans: [[-10, 10]], leftCm: -10, rightCm: 10, circumferenceCm: null };
    expect(JSON.parse(output)).toEqual({
      pieces: [
        {
          ...{ piece: "scarf", made: 1, stitches: 80, areaCm2: 16 },
          steps: [
            { row: 1, ...row },
            { row: 2, ...row },
          ],
          outline: [
            [-10, 0],
            [10, 0],
            [10, 0.8],
            [-10, 0.8],
            [-10, 0],
          ],
        },
      ],
      faults: [
        { step: "slit", seam: null, size: "small", says: expect.stringMatching(/^What is bound off at the centre/) },
      ],
    });
  });

  it("prints one line per fault of a document, path first, nothing on standard output, and exits with 2", () => {
    const call = callDocument([reader("a", { bust: 104 }, { size: "huge" })]);
    expect(engine(["gaps", "-"], JSON.stringify(call))).toEqual({
      status: 2,
      output: "",
      errors: "testers[0].size: there is no size “huge”.\n",
    });
  });

  it.each([
    [
      "a tester of another size",
      ["predict", "-"],
      JSON.stringify({ pattern: patternDocument(), size: "large", tester: reader("a", {}) }),
      /^tester\.size: /,
    ],
    ["broken JSON", ["gaps", "-"], "{", /^\$: is not JSON/],
    ["a missing file", ["gaps", "/nowhere/call.json"], "", /^\$: \/nowhere\/call\.json cannot be read/],
    ["an unknown verb", ["mend", "-"], "{}", /^\$: there is no verb “mend”/],
    ["no verb", [], "", /^\$: name a verb/],
  ])("answers %s in one line and leaves with 2", (_what, verbs, input, says) => {
    const { status, output, errors } = engine(verbs, input);
    expect(status).toBe(2);
    expect(output).toBe("");
    expect(errors).toMatch(says);
    expect(errors.trim().split("\n")).toHaveLength(1);
  });
});
