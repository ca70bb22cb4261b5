import { expect, it } from "vitest";
import { runEngineTask } from "@/engine/engine-task";
import { analyseCall } from "@/features/results/mutations";
import { yarnForTester } from "@/features/results/yarn/yarn-for-tester-data";
import { callDocument, reader } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeCall, makeTester } from "./make-tester";

const pattern = patternDocument({
  yarns: [{ id: "wool", label: "Wool", metresPerBall: 160, gramsPerBall: 50 }],
  pieces: [
    {
      ...{ id: "body", label: "Body", fabric: "main", made: 2, yarn: "wool" },
      sections: [{ from: "width", to: "width", rows: "height" }],
    },
  ],
});

it("is what the size needs by the newest analysis, for a tester of the call alone", async () => {
  const weighed = { ...reader("ann", { bust: 100 }), yarn: [{ yarn: "wool", grams: 250, metresPer100g: 320 }] };
  const made = await makeCall(callDocument([weighed], { pattern }));
  const [small, large] = [await makeTester(made), await makeTester(made, { size: "large" })];
  expect(await yarnForTester(small, "small")).toEqual([]);
  await analyseCall(made.call.callId, (task) =>
    Promise.resolve(
      runEngineTask(task, () => {
        throw new Error("nothing is solved here");
      }),
    ),
  );
  const [ofSmall, ofLarge] = [await yarnForTester(small, "small"), await yarnForTester(large, "large")];
  // The one who weighed used 250 g × 3.2 m; nine in ten need no more than somewhat above that.
  expect(ofSmall).toEqual([{ yarn: "wool", upperMetres: expect.closeTo(900, -2) as number }]);
  expect(ofSmall[0]?.upperMetres).toBeGreaterThan(800);
  expect(ofLarge[0]?.upperMetres).toBeGreaterThan(ofSmall[0]?.upperMetres ?? 0);
  const stranger = await makeTester(await makeCall());
  expect(await yarnForTester(stranger, "small")).toEqual([]);
  expect(await yarnForTester({ ...stranger, testerId: small.testerId }, "small")).toEqual([]);
  expect(await yarnForTester({ ...small, linkVersion: 2 }, "small")).toEqual([]);
});
