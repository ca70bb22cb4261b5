import { randomUUID } from "node:crypto";
import type { Browser, BrowserContext, Page } from "@playwright/test";
import { ENGINE_VERSION } from "../src/engine/engine-version";
import { readInstructions } from "../src/engine/instructions";
import { z } from "zod";
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

/** A tester whose width is corrected, and their own phone, without scripts. */
async function correctedTester(browser: Browser): Promise<{ tester: MadeTester; own: Page }> {
  const tester = await makeTester(PATTERN);
  await publishWidth(tester);
  return { tester, own: await plainBrowser(browser, (into) => letIn(into, tester), PHONE) };
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
  const { tester, own } = await correctedTester(browser);
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

test("the tester's text shows what is corrected, and the next revision takes it in", async ({
  browser,
  page,
  context,
}) => {
  const { tester, own } = await correctedTester(browser);
  await own.goto(`/testing/${tester.testerId}/pattern`);
  const passage = own.locator("[data-passage]").filter({ hasText: "Cast on" });
  await expect(passage).toContainText("wrong for your size: 98 right: 100 (118) stitches.");
  await expect(passage).toContainText("Two stitches too few.");
  await expect(own.getByText("Corrected here")).toBeVisible();
  await own.getByRole("button", { name: "Only my size" }).click();
  await expect(passage).toContainText("wrong for your size: 98 right: 100 stitches.");
  await expectNoSidewaysScroll(own);

  await signInByCookie(context, tester.designer);
  const [call] = await query("SELECT pattern_id FROM call WHERE id = $1", [tester.callId]);
  const { pattern_id: patternId } = z.object({ pattern_id: z.string() }).parse(call);
  await page.goto(`/patterns/${patternId}/edit`);
  await page.getByRole("link", { name: "Save a revision with it, or mark it as done" }).click();
  await expect(page.getByText("Not in the pattern yet", { exact: true }).first()).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await page.getByRole("button", { name: "Save revision 2 with these" }).click();
  await expect(page.getByText("In the pattern since revision 2")).toBeVisible();
  await page.goto(`/patterns/${patternId}/revisions`);
  await expect(page.getByText("Two stitches too few.")).toBeVisible();
  await page.goto(`/calls/${tester.callId}/pattern`);
  await expect(page.getByText("Cast on 100 (118) stitches.")).toBeVisible();

  // Who keeps the old number keeps it in the text.
  const corrections = own.getByRole("list", { name: "Corrections" });
  await own.goto(`/testing/${tester.testerId}/pattern`);
  await corrections.getByRole("button", { name: "Already past it, keeping the old" }).click();
  await expect(passage).not.toContainText("wrong for your size");
});

test("the designer is told early of a wrong count, and publishes the correction that is prepared", async ({
  page,
  context,
}) => {
  const tester = await makeTester(PATTERN);
  const cell = { size: "small", measurement: "bust", reports: 4, gapCm: 6, standardErrorCm: 0.5, lowCm: 5, highCm: 7 };
  const cause = { kind: "count", id: "width", size: "small", estimate: 6, standardError: 0.5, unit: "stitches" };
  const differences = {
    cells: [{ ...cell, chanceOff: 1, verdict: "off", testersToSettle: null }],
    causes: [{ ...cause, explains: 1, evidence: 20, rivals: [] }],
  };
  const analysed = () => query("SELECT FROM analysis WHERE call_id = $1", [tester.callId]);
  await expect.poll(async () => (await analysed()).length).toBe(1);
  // Both at once, so that the worker finds nothing more to do.
  await query(
    `WITH raised AS (UPDATE call SET version = 2 WHERE id = $1 RETURNING id, pattern_id)
     INSERT INTO analysis (call_id, call_version, engine_version, status, revision_id, differences)
     SELECT raised.id, 2, $2, 'done', revision.id, $3 FROM raised JOIN revision USING (pattern_id)`,
    [tester.callId, ENGINE_VERSION, JSON.stringify(differences)],
  );
  await query("INSERT INTO tester_contact (tester_id, name) VALUES ($1, 'Ann')", [tester.testerId]);
  await signInByCookie(context, tester.designer);
  await page.goto("/");
  await expect(page.getByText("give 104 stitches")).toContainText(
    "In size S the text seems to give 104 stitches for “Width”, not 98. Ann has not reached it.",
  );
  await page.getByRole("link", { name: "Prepare a correction" }).click();
  await expect(page.getByLabel("The text says: Width, size S")).toHaveValue("104");
  await expect(page.getByLabel("It should be: Width, size S")).toHaveValue("98");
  await page.getByLabel("What is wrong, and what is right").fill("Work 98 stitches, not 104.");
  await page.getByRole("button", { name: "Publish correction" }).click();
  await expect(page.getByText("No answer yet: 1")).toBeVisible();
  await page.goto(`/calls/${tester.callId}`);
  await expect(page.getByText("1 tester has not answered a correction yet.")).toBeVisible();
  await expect(page.getByText("the text seems to give")).toBeHidden();
});
