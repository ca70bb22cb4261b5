import { randomUUID } from "node:crypto";
import type { Browser, BrowserContext, Page } from "@playwright/test";
import { readInstructions } from "../src/engine/instructions";
import { patternDocument } from "../test/factories/pattern";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester, type MadeTester } from "./make-tester";
import { openStep } from "./tester-steps";
import { violations } from "./violations";

const TEXT = "# Body\n\nCast on 98 (118) stitches.\n\nWork 100 (110) rows.\n";
const PATTERN = patternDocument({ instructions: TEXT });

const PHONE = { width: 360, height: 740 };

/** A browser without scripts. */
async function plainBrowser(
  browser: Browser,
  letInto: (context: BrowserContext) => Promise<void>,
  viewport = { width: 1280, height: 800 },
): Promise<Page> {
  const context = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled: false, viewport });
  await letInto(context);
  return await context.newPage();
}

/** Publishes that S needs 100 stitches, not 98. @returns what it says. */
async function publishWidth({ callId }: MadeTester, text = "Two stitches too few."): Promise<string> {
  const numbers = [{ count: "width", size: "small", was: 98, becomes: 100 }];
  const place = readInstructions(TEXT)[1]?.place;
  await query(
    `INSERT INTO correction (call_id, revision_id, place, sizes, numbers, text, idempotency_key)
     SELECT call.id, revision.id, $2, '{small}', $3, $4, $5 FROM call JOIN revision USING (pattern_id) WHERE call.id = $1`,
    [callId, JSON.stringify(place), JSON.stringify(numbers), text, randomUUID()],
  );
  return text;
}

test("a correction names counts with their old and new numbers, with and without scripts", async ({
  browser,
  page,
  context,
}) => {
  const tester = await makeTester(PATTERN);
  const questions = `/calls/${tester.callId}/questions`;
  const plain = await plainBrowser(browser, (into) => signInByCookie(into, tester.designer));
  await plain.goto(questions);
  await plain.getByText("Write a correction").click();
  await plain.getByRole("checkbox", { name: "Width" }).check();
  await plain.getByRole("button", { name: "Show these numbers" }).click();
  await expect(plain.getByLabel("The text says: Width, size S")).toHaveValue("98");
  await plain.getByLabel("What is wrong, and what is right").fill("Too few stitches.");
  await plain.getByLabel("It should be: Width, size S").fill("10O");
  await plain.getByRole("button", { name: "Publish correction" }).click();
  await expect(plain.getByText(/^▲?Width, S: enter both numbers as whole numbers such as 48/)).toBeVisible();
  await expect(plain.getByLabel("It should be: Width, size S")).toHaveValue("10O");
  await plain.getByLabel("It should be: Width, size S").fill("100");
  await plain
    .getByLabel("Passage of the instructions (optional)")
    .selectOption({ label: "Cast on 98 (118) stitches." });
  await plain.getByRole("button", { name: "Publish correction" }).click();
  const published = plain.getByRole("listitem").filter({ hasText: "Too few stitches." });
  await expect(published).toContainText("wrong: 98 right: 100");
  await expect(published).toContainText("size S");

  // The next one starts from the corrected number.
  await signInByCookie(context, tester.designer);
  await page.goto(questions);
  await page.getByText("Write a correction").click();
  await page.getByLabel("What is wrong, and what is right").fill("Still too few.");
  await page.getByRole("checkbox", { name: "Width" }).check();
  await expect(page.getByLabel("The text says: Width, size S")).toHaveValue("100");
  await expect(page.getByLabel("What is wrong, and what is right")).toHaveValue("Still too few.");
  await page.getByLabel("It should be: Width, size L").fill("118");
  await page.getByRole("button", { name: "Publish correction" }).click();
  await expect(page.getByText("Width, L: both numbers are 118. Enter the right one, or leave it blank.")).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await expectNoSidewaysScroll(page);
  await page.getByLabel("It should be: Width, size L").fill("120");
  await page.getByRole("button", { name: "Publish correction" }).click();
  await expect(page.getByRole("listitem").filter({ hasText: "Still too few." })).toContainText("wrong: 118 right: 120");

  // The tester makes S: the second is not theirs.
  const own = await plainBrowser(browser, (into) => letIn(into, tester));
  await own.goto(`/testing/${tester.testerId}`);
  const news = own.getByRole("region", { name: "New for you" });
  await expect(news).toContainText("wrong: 98 right: 100");
  await expect(news).toContainText("“Cast on 98 (118) stitches.”");
  await expect(news).not.toContainText("Still too few.");
});

test("a tester answers by one tap, confirms the number that they keep, and can change their mind", async ({
  browser,
  page,
  context,
}) => {
  const tester = await makeTester(PATTERN);
  await publishWidth(tester);
  const own = await plainBrowser(browser, (into) => letIn(into, tester), PHONE);
  const home = `/testing/${tester.testerId}`;
  await own.goto(home);
  const news = own.getByRole("region", { name: "New for you" });
  await expect(news).toContainText("Where are you with this?");
  await own.reload();
  await news.getByRole("button", { name: "Already past it, keeping the old" }).click();
  await expect(news.getByLabel("Width")).toHaveValue("98");
  await news.getByLabel("Width").fill("none");
  await news.getByRole("button", { name: "Yes, I worked this" }).click();
  await expect(news.getByText(/Enter whole numbers such as 48/)).toBeVisible();
  await news.getByLabel("Width").fill("97");
  await news.getByRole("button", { name: "Yes, I worked this" }).click();
  await expect(news).toBeHidden();
  const answered = own.getByRole("region", { name: "Corrections you answered" });
  await expect(answered).toContainText("You worked 97 stitches (Width)");
  await openStep(own, "Your counts");
  await expect(own.getByLabel("Width")).toHaveValue("97");

  // Beside the pattern, too; the number that they confirmed goes with the answer.
  await own.goto(`${home}/pattern`);
  const beside = own.getByRole("list", { name: "Corrections" });
  await beside.getByText("Change your answer").click();
  await beside.getByRole("button", { name: "Ripped back and changed it" }).click();
  await expect(beside).toContainText("Your answer: Ripped back and changed it");
  await own.goto(`${home}/counts`);
  await expect(own.getByLabel("Width")).toHaveValue("");
  await expect(own.getByText("Pattern: 100; yours is not told yet")).toHaveCount(2);
  await expectNoSidewaysScroll(own);

  await signInByCookie(context, tester.designer);
  await page.goto(`/calls/${tester.callId}/questions`);
  await expect(page.getByText("Ripped back and changed it: 1")).toBeVisible();

  // With scripts, and the designer sees at once who has not answered.
  const second = await publishWidth(tester, "The edging goes on last.");
  await page.goto(`/calls/${tester.callId}`);
  await page.getByText("1 tester has not answered a correction yet.").waitFor();
  await page.getByRole("link", { name: "See their answers" }).click();
  await expect(page.getByText("No answer yet: 1")).toBeVisible();
  await letIn(context, tester);
  await page.goto(home);
  const asked = page.getByRole("region", { name: "New for you" });
  await expect(asked).toContainText(second);
  expect(await violations(page)).toEqual([]);
  await asked.getByRole("button", { name: "Not in my version" }).click();
  await expect(asked).toBeHidden();
  await expect(page.getByRole("region", { name: "Corrections you answered" })).toContainText(second);
});
