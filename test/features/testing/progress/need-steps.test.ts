import { expect, it } from "vitest";
import { needSteps } from "@/features/testing/progress/need-steps";

it("tells a designer which testers need them, the most urgent first, each with the list of those whom it concerns", () => {
  const steps = needSteps({ silent: 2, late: 1, stuck: 3, "off gauge": 1, stopped: 1, behind: 4 });
  expect(steps.map(({ page, search = "", message }) => `${page}${search}: ${message}`)).toEqual([
    "progress?needs=stuck: 3 testers are stuck.",
    "sizes: 1 tester has stopped.",
    "progress?needs=late: 1 tester is late.",
    "progress?needs=off%20gauge: 1 tester is off gauge and has not started the garment.",
    "progress?needs=silent: 2 testers have sent no news for 10 days or more.",
  ]);
});

it("tells nothing where nobody needs them", () => {
  expect(needSteps({})).toEqual([]);
  expect(needSteps({ behind: 2, lapsed: 1 })).toEqual([]);
});
