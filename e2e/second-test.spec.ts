import type { Page } from "@playwright/test";
import { callDocument, reader } from "../test/factories/call";
import { piecedPattern } from "../test/factories/pieced-pattern";
import { query } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll, expectResults, importCall } from "./import-call";
import { violations } from "./violations";

const FIRST = "Spring test";

/** A test with two reports, and a revision after the one that they are of. @returns the call's id. */
async function makeTested(page: Page): Promise<string> {
  const pattern = piecedPattern();
  const testers = [reader("t1", { bust: 103, "upper-arm": 36 }), reader("t2", { bust: 102, "upper-arm": 35 })];
  const callId = await importCall(page, callDocument(testers, { pattern }));
  await query(
    "INSERT INTO revision (pattern_id, number, document, reason) SELECT pattern_id, 2, document, 'Next' FROM revision WHERE pattern_id = (SELECT pattern_id FROM call WHERE id = $1)",
    [callId],
  );
  return callId;
}

/** Chooses the pieces that testers make, and no others. */
async function testOnly(page: Page, labels: readonly string[]): Promise<void> {
  const form = page.getByRole("region", { name: "What testers make" });
  for (const box of await form.getByRole("checkbox").all()) await box.uncheck();
  for (const label of labels) await form.getByRole("checkbox", { name: label }).check();
  await form.getByRole("button", { name: "Save pieces" }).click();
}

test("a designer tests one piece of the next revision, with the earlier reports or without them", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  const callId = await makeTested(page);
  await page.goto(`/calls/${callId}`);
  await page.getByRole("link", { name: "Testers", exact: true }).click();
  await page.getByRole("link", { name: "Progress" }).click();
  await page.getByText("Test the next revision").click();
  await page.getByRole("button", { name: "New test of revision 2" }).click();

  const counting = page.getByRole("region", { name: "Reports of the earlier test" });
  await counting.getByRole("button", { name: "Count this test alone" }).click();
  await expect(counting).toContainText(`Reports of “${FIRST}” do not count here`);
  await counting.getByRole("button", { name: "Count both tests together" }).click();
  await expect(counting).toContainText(`Reports of “${FIRST}” count here too`);

  const pieces = page.getByRole("region", { name: "What testers make" });
  await expect(pieces).toContainText("Testers make the whole garment.");
  await testOnly(page, ["Sleeve"]);
  await expect(pieces).toContainText("Testers make only: Sleeve");
  await expect(pieces.getByRole("checkbox", { name: "Sleeve" })).toBeChecked();
  expect(await violations(page)).toEqual([]);
  await expectNoSidewaysScroll(page);

  await page.getByRole("link", { name: "Preview the public page" }).click();
  await expect(page.getByText("This test covers only part of the garment: Sleeve")).toBeVisible();
  await expect(page.getByRole("img", { name: "Sleeve in all sizes" })).toBeVisible();
  await expect(page.getByRole("img", { name: "Body in all sizes" })).toHaveCount(0);
  const sizes = page.getByRole("region", { name: "Sizes", exact: true });
  await expect(sizes.getByRole("term").filter({ hasText: "C upper-arm" })).toBeVisible();
  await expect(sizes.getByText("A Bust")).toHaveCount(0);
  await page.getByRole("link", { name: "Edit the listing" }).click();

  await page.getByRole("link", { name: "Results", exact: true }).click();
  await expectResults(page);
  const counted = page.getByRole("status").filter({ hasText: "Reports of 2 tests count together" });
  await expect(counted.getByRole("listitem")).toHaveText([
    "This test: no reports yet",
    `${FIRST}: 2 reports, with the stitches and rows worked there`,
  ]);
  await counted.getByRole("link", { name: FIRST }).click();
  await expect(page).toHaveURL(new RegExp(`/calls/${callId}$`));
});
