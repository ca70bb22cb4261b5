import { expect, it } from "vitest";
import { readDraft } from "@/features/testing/report/data";
import { saveFields } from "@/features/testing/report/draft-mutations";
import { sendReport } from "@/features/testing/report/send/send-mutations";
import { forgetTester } from "@/features/testing/home/forget-mutations";
import { readTester } from "@/features/testing/home/data";
import { storeSizesShown } from "@/features/testing/reading/sizes-shown-mutations";
import { database } from "@/server/database";
import { callDocument } from "../factories/call";
import { patternDocument } from "../factories/pattern";
import { makeCall, makeTester } from "./make-tester";

const YARN = { yarn: "wool", how: "balls", balls: "3", gramsPerBall: "50", metresPerBall: "160", label: "My own wool" };
const pattern = patternDocument({
  instructions: "Cast on 98 (118) stitches.",
  yarns: [{ id: "wool", label: "Wool", metresPerBall: 160, gramsPerBall: 50 }],
});

async function sentDocument(testerId: string): Promise<unknown> {
  return (await database().report.findFirst({ where: { testerId }, orderBy: { version: "desc" } }))?.document;
}

it("is all sizes until the tester chooses their own, and stays in the report that they send", async () => {
  const ann = await makeTester(await makeCall(callDocument([], { pattern })));
  expect((await readTester(ann)).sizesShown).toBe("all");
  await saveFields(
    ann,
    Object.entries(YARN).map(([part, becomes]) => ({ field: `yarn.1.${part}`, was: "", becomes })),
  );
  await sendReport(ann, (await readDraft(ann)).version);
  expect(await sentDocument(ann.testerId)).toMatchObject({ sizesShown: "all", yarn: [{ label: "My own wool" }] });
  await storeSizesShown(ann, "own");
  expect((await readTester(ann)).sizesShown).toBe("own");
  expect(await sendReport(ann, (await readDraft(ann)).version)).toEqual({ version: 2 });
  expect(await sentDocument(ann.testerId)).toMatchObject({ sizesShown: "own" });
  // What they called their yarn are their words.
  await forgetTester(ann);
  expect(JSON.stringify(await sentDocument(ann.testerId))).not.toContain("My own wool");
});

it("is chosen by nobody else, and is no part of a report on a pattern without a text", async () => {
  const called = await makeCall();
  const [ann, bea] = [await makeTester(called), await makeTester(called)];
  await expect(storeSizesShown({ ...ann, testerId: bea.testerId, linkVersion: 2 }, "own")).rejects.toMatchObject({
    code: "not-found",
  });
  expect((await readTester(bea)).sizesShown).toBe("all");
  await saveFields(bea, [{ field: "hours", was: "", becomes: "3" }]);
  await sendReport(bea, (await readDraft(bea)).version);
  expect(await sentDocument(bea.testerId)).not.toHaveProperty("sizesShown");
});
