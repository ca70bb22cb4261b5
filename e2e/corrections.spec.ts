import type { Browser, BrowserContext, Page } from "@playwright/test";
import { patternDocument } from "../test/factories/pattern";
import { signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester } from "./make-tester";
import { violations } from "./violations";

const TEXT = "# Body\n\nCast on 98 (118) stitches.\n\nWork 100 (110) rows.\n";
const PATTERN = patternDocument({ instructions: TEXT });

/** A browser without scripts. */
async function plainBrowser(browser: Browser, letInto: (context: BrowserContext) => Promise<void>): Promise<Page> {
  const context = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled: false });
  await letInto(context);
  return await context.newPage();
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
