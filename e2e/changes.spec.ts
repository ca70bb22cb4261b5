import { ANALYSIS_MS, importCall, expectNoSidewaysScroll, expectResults } from "./import-call";
import { expect, test } from "./fixtures";
import { violations } from "./violations";

test("a designer takes what is proposed, sees what follows, saves it, and every gap is closed", async ({
  page,
  designer,
}) => {
  test.setTimeout(4 * ANALYSIS_MS + 60_000);
  expect(designer.accountId).not.toBe("");
  const callId = await importCall(page);
  await page.goto(`/calls/${callId}/changes`);
  await expectResults(page);
  // The three planted faults: see prisma/demo.
  const proposal = page.getByRole("listitem").filter({ has: page.getByRole("group") });
  await expect(proposal).toHaveCount(3);
  await expect(proposal.nth(0)).toContainText("“Neck band” takes 0.8 cm more than stated");
  await expect(proposal.nth(1)).toContainText("“Upper arm” grows too much per size");
  await expect(proposal.nth(2)).toContainText("In size 2X the instructions give 7 (± 1.6) more");
  for (let at = 0; at < 3; at += 1) await proposal.nth(at).getByLabel("Leave it as it is").check();
  await page.getByRole("button", { name: "Show what changes" }).click();
  await expect(page.getByText("Accept at least one proposal")).toBeVisible();
  for (let at = 0; at < 3; at += 1) await proposal.nth(at).getByRole("radio").first().check();
  await page.getByRole("button", { name: "Show what changes" }).click();

  await page.waitForURL(/\/changes\/[0-9a-f-]{36}$/);
  await expect(page.getByRole("status").filter({ hasText: "72 of 72 targets will be met (58 are now)" })).toBeVisible({
    timeout: ANALYSIS_MS,
  });
  // 2 cm stated and 0.79 found; 60 stitches at 22 to 10 cm less two bands are 21.7 cm, and 23 are wanted.
  await expect(page.getByRole("row", { name: /Neck band/ })).toContainText("takes 2.79 cm");
  await expect(page.getByRole("row", { name: /Neck stitches/ })).toContainText("60 → 62");
  await expect(page.getByText("They make 299 of “Body stitches” where your grading says 292.")).toBeVisible();
  await expectNoSidewaysScroll(page);
  expect(await violations(page)).toEqual([]);
  await page.getByRole("button", { name: "Save as revision 2" }).click();

  await expect(page.getByText("Saved as revision 2.")).toBeVisible({ timeout: ANALYSIS_MS });
  await expectResults(page);
  await expect(
    page.getByText("Of 8 measurements in 9 sizes, 0 are different from the pattern and 72 as planned"),
  ).toBeVisible();
  const pattern = page.getByRole("link", { name: /Saltmarsh Tee/ }).first();
  await page.goto(`${await pattern.getAttribute("href")}/revisions/2`);
  await expect(page.getByRole("heading", { name: "Evidence" })).toBeVisible();
  await expect(page.getByText("“Neck band” takes 0.8 cm more than stated").last()).toBeVisible();
  await expect(page.getByText(/from 25 testers/)).toBeVisible();
});
