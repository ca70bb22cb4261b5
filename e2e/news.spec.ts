import type { Page } from "@playwright/test";
import { patternDocument } from "../test/factories/pattern";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester, typeReport, type MadeTester } from "./make-tester";
import { goHome, openStep } from "./tester-steps";
import { violations } from "./violations";

const TEXT = "# Body\n\nCast on 98 (118) stitches.\n\nWork 100 (110) rows.\n";
const PATTERN = patternDocument({ instructions: TEXT });

/** Saves a second revision with two rows more in every size. */
async function revise({ callId }: MadeTester): Promise<void> {
  const grading = { ...PATTERN.grading, height: { small: 102, large: 112 } };
  const instructions = TEXT.replace("100 (110)", "102 (112)");
  await query(
    `INSERT INTO revision (pattern_id, number, document, reason) SELECT pattern_id, 2, $2, 'Longer' FROM call WHERE id = $1`,
    [callId, JSON.stringify({ ...PATTERN, grading, instructions })],
  );
}

/** The item of what is new that holds these words. */
function newsItem(page: Page, words: string) {
  return page.getByRole("region", { name: "New for you" }).getByRole("listitem").filter({ hasText: words });
}

test("a correction, an answer and a newer revision stand on a tester's home until they are read", async ({
  browser,
  page,
  context,
}) => {
  const tester = await makeTester(PATTERN);
  const phone = await browser.newContext({
    baseURL: process.env.NEXTAUTH_URL,
    javaScriptEnabled: false,
    viewport: { width: 360, height: 740 },
  });
  await letIn(phone, tester);
  const own = await phone.newPage();
  await own.goto(`/testing/${tester.testerId}`);
  await expect(own.getByRole("heading", { name: "New for you" })).toBeHidden();
  await own.getByRole("link", { name: "The pattern", exact: true }).click();
  await own.getByText("List of passages").click();
  await own.getByLabel("Passage").selectOption({ label: "Cast on 98 (118) stitches." });
  await own.getByRole("button", { name: "Ask about this passage" }).click();
  await own.getByLabel("Your question").fill("Loosely?");
  await own.getByRole("button", { name: "Send question" }).click();

  await signInByCookie(context, tester.designer);
  await page.goto(`/calls/${tester.callId}`);
  await page.getByRole("link", { name: "Testers", exact: true }).click();
  await page.getByRole("link", { name: "Questions", exact: true }).click();
  await page.getByLabel("Your answer").fill("Yes, with a larger hook.");
  await page.getByRole("button", { name: "Send answer" }).click();
  await expect(page.getByRole("heading", { name: "No open questions" })).toBeVisible();
  await page.getByText("Write a correction").click();
  await page.getByRole("button", { name: "Publish correction" }).click();
  await expect(page.getByText(/Write the correction first/)).toBeVisible();
  await page.getByLabel("What is wrong, and what is right").fill("The last row\nis worked twice.");
  await page.getByLabel("Passage of the instructions (optional)").selectOption({ label: "Work 100 (110) rows." });
  await page.getByRole("checkbox", { name: "S", exact: true }).check();
  await page.getByRole("button", { name: "Publish correction" }).click();
  await expect(page.getByText("No answer yet: 1")).toBeVisible();
  await expectNoSidewaysScroll(page);
  expect(await violations(page)).toEqual([]);
  await revise(tester);

  await goHome(own);
  await expect(newsItem(own, "The last row")).toContainText("“Work 100 (110) rows.”");
  await expect(newsItem(own, "Loosely?")).toContainText("Yes, with a larger hook.");
  await expect(newsItem(own, "Revision 2 is out.")).toContainText(/Height\s*100\s*→\s*102/);
  await expectNoSidewaysScroll(own);
  await newsItem(own, "Loosely?")
    .getByRole("link", { name: /Cast on/ })
    .click();
  await expect(own.getByRole("list", { name: "Corrections" })).toContainText("is worked twice.");
  await goHome(own);
  await newsItem(own, "The last row").getByRole("button", { name: "Not there yet, will follow" }).click();
  await expect(newsItem(own, "The last row")).toBeHidden();
  for (const words of ["Loosely?", "Revision 2 is out."]) {
    await newsItem(own, words).getByRole("button", { name: "Got it" }).click();
    await expect(newsItem(own, words)).toBeHidden();
  }
  await own.reload();
  await expect(own.getByRole("heading", { name: "New for you" })).toBeHidden();
  await page.reload();
  await expect(page.getByText("Will follow it: 1")).toBeVisible();

  // Whoever has read about the revision may still move to it.
  await own.getByText("Move to revision 2 …").click();
  await own.getByRole("button", { name: "Move to revision 2" }).click();
  await expect(own.getByRole("heading", { name: "Revision 2" })).toBeHidden();
  await own.getByRole("link", { name: "The pattern", exact: true }).click();
  await expect(own.getByText("Revision 2, the one you work from.")).toBeVisible();
  await phone.close();
});

test("counts that nobody touched are not told until the tester says that they followed the pattern", async ({
  page,
  context,
}) => {
  const tester = await makeTester(PATTERN);
  await typeReport(tester, { "worked.width": "96" });
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await openStep(page, "Your counts");
  await expect(page.getByText("Pattern: 100; yours is not told yet")).toBeVisible();
  await expect(page.getByText("Pattern: 98", { exact: true })).toBeVisible();
  await openStep(page, "Review and send");
  await expect(page.getByText("All others not told yet.")).toBeVisible();
  await page.getByRole("button", { name: "Send report" }).click();
  await expect(page.getByText("Your report is sent, version 1. Thank you.").first()).toBeVisible();

  await signInByCookie(context, tester.designer);
  await page.goto(`/calls/${tester.callId}/progress/${tester.testerId}`);
  await expect(page.getByText("All others not told.")).toBeVisible();

  await page.goto(`/testing/${tester.testerId}/report`);
  await page.getByRole("button", { name: "I followed the pattern everywhere except where I enter a number" }).click();
  await expect(page.getByRole("heading", { name: "Did you follow the pattern?" })).toBeHidden();
  await expect(page.getByText("All others as in the pattern.")).toBeVisible();
  await page.getByRole("button", { name: "Send changes" }).click();
  await expect(page.getByText("Your report is sent, version 2. Thank you.").first()).toBeVisible();
  await page.goto(`/calls/${tester.callId}/progress/${tester.testerId}`);
  await expect(page.getByText("All others as in the pattern.")).toBeVisible();
});
