import { expect, it } from "vitest";
import { needSteps } from "@/features/testing/progress/need-steps";

it("names what testers need, the most urgent first, each leading to those whom it concerns", () => {
  const steps = needSteps([
    { needs: ["silent"], many: 2 },
    { needs: ["late"], many: 1 },
    { needs: ["stuck"], many: 3 },
    { needs: ["off gauge"], many: 1 },
    { needs: ["stopped"], many: 1 },
    { needs: ["behind"], many: 4 },
  ]);
  expect(steps.map(({ message }) => message)).toEqual([
    "3 testers are stuck.",
    "1 tester has stopped.",
    "1 tester is late.",
    "1 tester is off gauge and has not started the garment.",
    "2 testers have sent no news for 10 days or more.",
  ]);
  expect(steps.map(({ page, search }) => [page, search ?? null])).toEqual([
    ["progress", "?needs=stuck"],
    ["sizes", null],
    ["progress", "?needs=late"],
    ["progress", "?needs=off%20gauge"],
    ["progress", "?needs=silent"],
  ]);
});

it("counts nobody twice: a second need is said beside the first", () => {
  const messages = (...args: Parameters<typeof needSteps>) => needSteps(...args).map(({ message }) => message);
  expect(messages([{ needs: ["stuck", "late", "silent"], many: 1 }])).toEqual([
    "1 tester is stuck; they are also late and have also sent no news for 10 days or more.",
  ]);
  expect(
    messages([
      { needs: ["stuck", "late"], many: 1 },
      { needs: ["stuck"], many: 1 },
      { needs: ["late", "silent"], many: 2 },
      { needs: ["silent"], many: 1 },
      { needs: ["silent", "behind"], many: 1 },
    ]),
  ).toEqual([
    "2 testers are stuck; 1 of them is also late.",
    "2 more testers are late; both have also sent no news for 10 days or more.",
    "2 more testers have sent no news for 10 days or more.",
  ]);
});

it("is silent where nothing needs the designer", () => {
  expect(needSteps([])).toEqual([]);
  expect(
    needSteps([
      { needs: ["behind"], many: 2 },
      { needs: ["lapsed"], many: 1 },
    ]),
  ).toEqual([]);
});
