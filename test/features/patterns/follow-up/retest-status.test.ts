import { describe, expect, it } from "vitest";
import { retestMarks } from "../../../../src/features/patterns/follow-up/retest-copy";
import { retestStatus, type CorrectedInRevision } from "../../../../src/features/patterns/follow-up/retest-status";

const corrected: CorrectedInRevision = {
  ...{ size: "m", revisionNumber: 3, measurements: ["bust", "hip"] },
  ...{ checkedBy: null, checkedAt: null },
};
const checked = { ...corrected, checkedBy: "Ada Marsh", checkedAt: new Date(0) };
const report = (revisionNumber: number, measurements: string[], size = "m") => ({ size, revisionNumber, measurements });
const bustOff = { size: "m", measurement: "bust", revisionNumber: 3 };

describe("a corrected size", () => {
  it("waits until reports on its revision or a later one have measured all that it changes", () => {
    const status = (...measured: ReturnType<typeof report>[]) => retestStatus(corrected, { measured, off: [] });
    expect(status()).toBe("due");
    expect(status(report(2, ["bust", "hip"]))).toBe("due");
    expect(status(report(3, ["bust"]), report(3, ["hip"], "l"))).toBe("due");
    expect(status(report(3, ["bust"]), report(4, ["hip"]))).toBe("retested");
  });

  it("with nothing to measure waits for any report of its size", () => {
    const none = { ...corrected, measurements: [] };
    expect(retestStatus(none, { measured: [], off: [] })).toBe("due");
    expect(retestStatus(none, { measured: [report(3, [])], off: [] })).toBe("retested");
  });

  it("is not confirmed by reports that find it different still, whoever signed it off", () => {
    const measured = [report(3, ["bust", "hip"])];
    for (const one of [corrected, checked]) expect(retestStatus(one, { measured, off: [bustOff] })).toBe("off");
    const others = [
      { ...bustOff, size: "l" },
      { ...bustOff, measurement: "arm" },
      { ...bustOff, revisionNumber: 2 },
    ];
    expect(retestStatus(corrected, { measured, off: others })).toBe("retested");
  });

  it("is checked by who signed it off, until it is measured", () => {
    expect(retestStatus(checked, { measured: [], off: [bustOff] })).toBe("checked");
    expect(retestStatus(checked, { measured: [report(3, ["bust", "hip"])], off: [] })).toBe("retested");
  });

  it("is marked by the gravest where it was corrected more than once", () => {
    const standings = [
      { size: "m", status: "checked" },
      { size: "m", status: "due" },
      { size: "l", status: "retested" },
      { size: "s", status: "checked" },
      { size: "s", status: "off" },
    ] as const;
    expect(Object.fromEntries(retestMarks(standings))).toEqual({ m: "not yet re-tested", s: "re-tested, still off" });
  });
});
