import type { Browser, BrowserContext, Page } from "@playwright/test";
import { listingDocument } from "../test/factories/listing";
import { patternDocument } from "../test/factories/pattern";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester, typeReport, type MadeTester } from "./make-tester";
import { expectOpen, goHome, openStep, tapeLabel, typeSlowly } from "./tester-steps";
import { violations } from "./violations";

const REPORT = {
  ...{ "swatch.1.stitches": "20", "swatch.1.across": "10", "swatch.1.rows": "28", "swatch.1.along": "10" },
  ...{ "swatch.1.washed": "yes", "swatch.1.toolMm": "4", "worked.width": "96", asWritten: "yes" },
  ...{ "reading.bust.2kq.value": "50", "reading.length.1.value": "40" },
};

/** The tester's phone. */
async function phoneOf(browser: Browser, tester: MadeTester, javaScriptEnabled = true): Promise<BrowserContext> {
  const viewport = { width: 360, height: 740 };
  const phone = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, viewport, javaScriptEnabled });
  await letIn(phone, tester);
  return phone;
}

async function sendReport(page: Page, { testerId }: MadeTester): Promise<void> {
  await page.goto(`/testing/${testerId}`);
  await openStep(page, "Review and send");
  await page.getByRole("button", { name: "Send report" }).click();
  await expect(page.getByText("Your report is sent, version 1. Thank you.").first()).toBeVisible();
}

/** The designer comes to a tester's page by its links. */
async function openTester(page: Page, { callId }: MadeTester): Promise<void> {
  await page.goto(`/calls/${callId}`);
  await page.getByRole("link", { name: "Testers", exact: true }).click();
  await page.getByRole("link", { name: "Progress", exact: true }).click();
  await page.getByRole("link", { name: "tester-1" }).click();
  await expect(page.getByRole("heading", { name: "Their report" })).toBeVisible();
}

/** A line of the report on the designer's page. */
function lineOf(page: Page, label: string) {
  return page.getByRole("definition").filter({ has: page.getByText(new RegExp(`about this number … *${label}`)) });
}

async function ask(page: Page, label: string, asks: string): Promise<void> {
  const line = lineOf(page, label);
  await line.getByText("Ask about this number …").click();
  await line.getByLabel("Your question").pressSequentially(asks, { delay: 20 });
  await line.getByRole("button", { name: "Ask", exact: true }).click();
  await expect(
    page.getByRole("region", { name: "Questions about their numbers" }).getByText(asks, { exact: true }),
  ).toBeVisible();
}

function newsItem(page: Page, words: string) {
  return page.getByRole("region", { name: "New for you" }).getByRole("listitem").filter({ hasText: words });
}

test("a question about a number waits at its field, and the answer on the tester's page", async ({
  browser,
  page,
  context,
}) => {
  // Two people in turn, with pauses.
  test.slow();
  const tester = await makeTester(patternDocument());
  await typeReport(tester, REPORT);
  const phone = await phoneOf(browser, tester);
  const own = await phone.newPage();
  await sendReport(own, tester);

  await signInByCookie(context, tester.designer);
  await openTester(page, tester);
  await ask(page, "A Bust", "Was it laid flat?");
  await expect(lineOf(page, "A Bust").getByLabel("Your question")).toBeHidden();
  await ask(page, "Width", "Really 96 stitches?");
  const answers = page.getByRole("region", { name: "Questions about their numbers" });
  await expect(answers.getByText("Not answered yet.")).toHaveCount(2);
  expect(await violations(page)).toEqual([]);

  await goHome(own);
  await newsItem(own, "Was it laid flat?").getByRole("link", { name: "Look at it and answer" }).click();
  await expectOpen(own, "Bust");
  await expect(own.getByText("Was it laid flat?")).toBeVisible();
  await expectNoSidewaysScroll(own);
  expect(await violations(own)).toEqual([]);
  await own.getByLabel(tapeLabel("Bust")).fill("");
  await typeSlowly(own, tapeLabel("Bust"), "100");
  await goHome(own);
  await newsItem(own, "You changed it.").getByRole("link", { name: "Send your report again" }).click();
  await own.getByRole("button", { name: "Send changes" }).click();
  await expect(own.getByText("Your report is sent, version 2. Thank you.").first()).toBeVisible();
  await phone.close();

  // The other question on a phone without scripts.
  const plain = await phoneOf(browser, tester, false);
  const bare = await plain.newPage();
  await bare.goto(`/testing/${tester.testerId}`);
  await expect(newsItem(bare, "Was it laid flat?")).toBeHidden();
  await newsItem(bare, "Really 96 stitches?").getByRole("link", { name: "Look at it and answer" }).click();
  await bare.getByLabel("Or, if it is right, a few words (optional)").fill("I counted twice.");
  await bare.getByRole("button", { name: "It is right as it is" }).click();
  await expect(bare.getByText("You said that it is right: “I counted twice.”")).toBeVisible();
  await plain.close();

  await page.goto(`/calls/${tester.callId}`);
  await page.getByRole("link", { name: "Read what they say" }).click();
  await page.getByRole("link", { name: "tester-1" }).click();
  await expect(answers.getByText(/^Changed to “100”/)).toBeVisible();
  await expect(answers.getByText(/^They said on .* that it is right: “I counted twice.”$/)).toBeVisible();
  for (const left of [1, 0]) {
    await answers
      .getByRole("button", { name: /^Got it/ })
      .first()
      .click();
    // Gone, and not only waiting: a page that is left meanwhile takes the answer with it.
    await expect(answers.getByRole("button", { name: /^(Got it|One moment)/ })).toHaveCount(left);
  }
  await page.goto(`/calls/${tester.callId}`);
  await expect(page.getByRole("link", { name: "Read what they say" })).toBeHidden();
});

test("another value is used beside the one that was typed, until it is taken back", async ({
  browser,
  page,
  context,
}) => {
  test.slow();
  const tester = await makeTester(patternDocument());
  await typeReport(tester, REPORT);
  const phone = await phoneOf(browser, tester);
  await sendReport(await phone.newPage(), tester);
  await phone.close();

  await signInByCookie(context, tester.designer);
  await openTester(page, tester);
  const bust = lineOf(page, "A Bust");
  await bust.getByText("Use another value …").click();
  await bust.getByRole("button", { name: "Use this value" }).click();
  await expect(bust.getByText("Enter why, in a few words.")).toBeVisible();
  await bust.getByLabel("Value to use (cm)").pressSequentially("1000000", { delay: 20 });
  await bust.getByLabel("Reason").pressSequentially("measured flat", { delay: 20 });
  await bust.getByRole("button", { name: "Use this value" }).click();
  await expect(bust.getByText(/2000/)).toBeVisible();
  await bust.getByLabel("Value to use (cm)").fill("100.5");
  await bust.getByRole("button", { name: "Use this value" }).click();
  await expect(bust.getByText(/^100.5 cm is used instead, by .*: “measured flat”\.$/)).toBeVisible();
  await expect(bust.getByText("50 cm", { exact: true })).toBeVisible();
  await expectNoSidewaysScroll(page);

  await page.getByRole("link", { name: "Results", exact: true }).click();
  await page.getByRole("link", { name: "Possible mistakes", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Possible mistakes" })).toBeVisible();
  const row = page.getByRole("row", { name: /tester-1/ });
  await expect(async () => {
    await page.reload();
    await expect(row).toContainText("100.5 cm is used instead", { timeout: 2_000 });
  }).toPass();
  await expect(row).toContainText("A Bust: 50.0 cm");
  expect(await violations(page)).toEqual([]);
  await row.getByText("Use another value …").click();
  await row.getByLabel("Value to use (cm)").pressSequentially("101", { delay: 20 });
  await row.getByLabel("Reason").pressSequentially("they wrote to me", { delay: 20 });
  await row.getByRole("button", { name: "Use this value" }).click();
  await expect(row).toContainText("101.0 cm is used instead");
  await row.getByRole("button", { name: /^Undo/ }).click();
  await expect(async () => {
    await page.reload();
    await expect(row).toContainText("Excluded automatically.", { timeout: 2_000 });
  }).toPass();

  await page.goto(`/calls/${tester.callId}/differences?cell=small.bust`);
  const card = page.getByRole("listitem").filter({ has: page.getByRole("heading", { name: "tester-1" }) });
  await card.getByText("Use another value …").click();
  await card.getByRole("button", { name: "Use this value" }).click();
  await expect(card.getByText("Enter why, in a few words.")).toBeVisible();
  await card.getByLabel("Value to use (cm)").pressSequentially("99.5", { delay: 20 });
  await card.getByLabel("Reason").pressSequentially("their photo shows it", { delay: 20 });
  await card.getByRole("button", { name: "Use this value" }).click();
  await expect(async () => {
    await page.reload();
    await expect(card).toContainText("50.0 cm was reported; 99.5 cm is used instead, by", { timeout: 2_000 });
  }).toPass();
  await expectNoSidewaysScroll(page);
  expect(await violations(page)).toEqual([]);
});

test("a tester's days and their test are the designer's to change", async ({ browser, page, context }) => {
  const tester = await makeTester(patternDocument());
  await typeReport(tester, REPORT);
  const listing = JSON.stringify(listingDocument());
  await query("INSERT INTO agreement (call_id, version, text) VALUES ($1, 1, 'You test and you tell.')", [
    tester.callId,
  ]);
  await query(
    "INSERT INTO listing (call_id, document, published_at, apply_until) VALUES ($1, $2, now(), '2090-03-15')",
    [tester.callId, listing],
  );
  const phone = await phoneOf(browser, tester);
  const own = await phone.newPage();
  await sendReport(own, tester);

  await signInByCookie(context, tester.designer);
  await openTester(page, tester);
  await page.getByLabel("Report by the end of").fill("2090-03-01");
  await page.getByRole("button", { name: "Save their days" }).click();
  await expect(page.getByText("The report can’t be due before the swatch.")).toBeVisible();
  await page.getByLabel("Report by the end of").fill("2090-07-20");
  await page.getByRole("button", { name: "Save their days" }).click();
  await expect(page.getByText(/They have days of their own/)).toBeVisible();
  await goHome(own);
  await expect(own.getByText("Thursday 20 July")).toBeVisible();
  await page.getByRole("button", { name: "Use the test’s days again" }).click();
  await expect(page.getByText(/The test’s days apply to them/)).toBeVisible();

  await page.getByText("End their test …").click();
  await page.getByRole("button", { name: "End their test" }).click();
  await expect(page.getByText(/You ended their test/)).toBeVisible();
  await own.reload();
  await expect(own.getByRole("heading", { name: "Your test has ended" })).toBeVisible();
  await expect(own.getByRole("button", { name: "Continue the test" })).toBeHidden();
  await expectNoSidewaysScroll(own);
  await page.getByRole("button", { name: "Let them go on" }).click();
  await expect(page.getByText("End their test …")).toBeVisible();
  await own.reload();
  await expect(own.getByRole("heading", { name: "Your test has ended" })).toBeHidden();
  await phone.close();
});
