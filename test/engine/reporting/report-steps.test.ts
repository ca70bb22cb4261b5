import { describe, expect, it } from "vitest";
import { nextStep, reportSteps } from "@/engine/reporting";
import { patternDocument } from "../../factories/pattern";
import { reportContext, typedSwatch } from "./report-context";

const states = (typed: Readonly<Record<string, string>>) =>
  Object.fromEntries(
    reportSteps(typed, reportContext()).map(({ step, state, message }) => [step, `${state}: ${message}`]),
  );

describe("the steps of a report", () => {
  it("are all empty at first, and begin with the swatch", () => {
    const steps = reportSteps({ hours: " " }, reportContext());
    expect(steps.map(({ step, state }) => [step, state])).toEqual(
      ["swatch", "make", "measure", "yarn", "fit"].map((step) => [step, "empty"]),
    );
    expect(nextStep(steps)?.step).toBe("swatch");
  });

  it("tell how much of each is done", () => {
    const typed = { ...typedSwatch(), asWritten: "yes", "reading.bust.1.value": "100", "yarn.1.yarn": "wool" };
    expect(states(typed)).toEqual({
      swatch: "complete: 1 of 1 fabric swatched",
      make: "complete: 3 of 3 numbers entered",
      measure: "begun: 1 of 2 measured",
      yarn: "begun: 0 of 2 yarns entered",
      fit: "empty: 0 of 1 answered",
    });
    expect(nextStep(reportSteps(typed, reportContext()))?.step).toBe("measure");
  });

  it("count a measurement changed on purpose as done", () => {
    expect(states({ "reading.bust.1.value": "100", "changed.length": "yes" })["measure"]).toBe(
      "complete: 2 of 2 measured",
    );
  });

  it("start with what needs fixing", () => {
    const typed = { "reading.bust.1.value": "wide", "worked.width": "98" };
    expect(states(typed)).toMatchObject({
      make: "begun: 1 of 3 numbers entered",
      measure: "faulty: 0 of 2 measured; 1 entry needs fixing",
    });
    expect(nextStep(reportSteps(typed, reportContext()))?.step).toBe("measure");
  });

  it("leave out what the pattern has nothing of, and end", () => {
    const pattern = patternDocument({ counts: [], measurements: [], sizes: [{ id: "small", label: "S", body: {} }] });
    const steps = reportSteps(typedSwatch(), reportContext({ pattern }));
    expect(steps.map(({ step }) => step)).toEqual(["swatch"]);
    expect(nextStep(steps)).toBeNull();
  });
});
