import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { gapBoard } from "../../../../src/features/results/gaps/gap-board";
import { gapsCsv } from "../../../../src/features/results/gaps/gaps-csv";
import { callDocument, reader } from "../../../factories/call";
import { resultsOf } from "../../../factories/results";

const CALL = callDocument(
  [103.04, 103.1, 102.9, 103].map((bust, index) => reader(`t${index}`, index === 0 ? { bust, length: 40 } : { bust })),
);
const RESULTS = resultsOf(CALL);

function lines(unit: "cm" | "in"): Record<string, string>[] {
  const csv = gapsCsv(gapBoard(RESULTS, unit), CALL.pattern);
  return Papa.parse<Record<string, string>>(csv, { header: true }).data;
}

describe("the differences as a file", () => {
  it("give planned and measured lengths beside each difference, to 0.1 cm", () => {
    const [bust] = lines("cm");
    // By hand: 2 × (98 ÷ 2 + 1) = 100 cm. Four testers on gauge measured about 103.
    expect(bust).toMatchObject({ letter: "A", measurement: "Bust", size: "S", "planned (cm)": "100", reports: "4" });
    const [planned, measured, difference] = ["planned", "measured", "difference"].map((name) =>
      Number(bust?.[`${name} (cm)`]),
    );
    expect(measured).toBeGreaterThan(101);
    expect(measured).toBeLessThan(103.1);
    expect((measured ?? 0) - (planned ?? 0)).toBeCloseTo(difference ?? Number.NaN, 6);
    for (const line of lines("cm"))
      for (const [head, text] of Object.entries(line))
        if (head.endsWith("(cm)")) expect(text).toMatch(/^(-?\d+(\.\d)?)?$/);
  });

  it("are given to 1/8 in for readers of inches", () => {
    let read = 0;
    for (const line of lines("in"))
      for (const [head, text] of Object.entries(line)) {
        if (!head.endsWith("(in)") || text === "") continue;
        read += 1;
        expect(Number(text) * 8).toBe(Math.round(Number(text) * 8));
      }
    expect(read).toBeGreaterThan(8);
    // By hand: 100 ÷ 2.54 = 39.37.
    expect(lines("in")[0]?.["planned (in)"]).toBe("39.375");
  });

  it("leave a cell blank where nobody measured", () => {
    const large = lines("cm").find(({ size }) => size === "L");
    expect(large).toMatchObject({ "planned (cm)": "120", "measured (cm)": "", reports: "0" });
  });
});
