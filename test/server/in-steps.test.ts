import { describe, expect, it } from "vitest";
import { inSteps } from "@/server/in-steps";

describe("work in steps", () => {
  it("gives its result, and lets whoever waits have their turn after every step", async () => {
    const order: string[] = [];
    function* steps(): Generator<undefined, string> {
      for (const step of ["first", "second", "third"]) {
        order.push(step);
        setImmediate(() => order.push(`another after the ${step}`));
        yield;
      }
      return "done";
    }
    expect(await inSteps(steps())).toBe("done");
    expect(order).toEqual([
      ...["first", "another after the first", "second", "another after the second"],
      ...["third", "another after the third"],
    ]);
  });
});
