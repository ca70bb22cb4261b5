import { randomUUID } from "node:crypto";
import type { Page } from "@playwright/test";
import { callAccess } from "../src/features/calls/access";
import { latestRevision } from "../src/features/patterns/data";
import { storeCall } from "../src/features/testing/report/document-mutations";
import { addReports } from "../src/features/testing/report/mutations";
import { signedIn } from "./designer";
import { ANALYSIS_MS, CALL, exported, expectNoSidewaysScroll, expectResults } from "./import-call";
import { expect, test } from "./fixtures";

// It waits for three analyses.
test.describe.configure({ timeout: 3 * ANALYSIS_MS + 60_000 });

/** A call to which reports come, and are not brought in with it; its method page is open. @returns its id. */
async function reportedCall(page: Page): Promise<string> {
  const viewer = await signedIn(page.context());
  const { callId } = await storeCall(viewer, { call: { ...CALL, testers: [] }, title: "Spring test" });
  const access = await callAccess(viewer, callId, "owner");
  const revision = await latestRevision(access.pattern);
  const reports = CALL.testers.map((tester) => ({ tester, typed: {}, idempotencyKey: randomUUID() }));
  await addReports(access, { revision, reports });
  await page.goto(`/calls/${callId}/method`);
  await expectResults(page);
  return callId;
}

test("a designer reads what an earlier test taught the next one, and does without", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await reportedCall(page);
  await expect(page.getByText(/there was no earlier test of another pattern/)).toBeVisible();
  await expect(page.getByRole("button", { name: "Calculate without earlier tests" })).toHaveCount(0);

  const callId = await reportedCall(page);
  await expect(page.getByText(/what one earlier test of another pattern by the same designer showed/)).toBeVisible();
  await expectNoSidewaysScroll(page);
  const address = `/calls/${callId}/export`;
  expect(JSON.parse(await exported(page, address))).toMatchObject({ prior: { calls: 1 } });

  await page.getByRole("button", { name: "Calculate without earlier tests" }).click();
  await expect(page.getByText(/is kept with this test, but not used/)).toBeVisible();
  await expectResults(page);
  expect(JSON.parse(await exported(page, address))).not.toHaveProperty("prior");
  await page.getByRole("button", { name: "Use what earlier tests showed" }).click();
  await expect(page.getByText(/The spreads are also pulled toward what one earlier test/)).toBeVisible();
});
