import { patternDocument } from "../test/factories/pattern";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { makeTester } from "./make-tester";

test("a designer tests the next revision, publishes it, lists an erratum, and archives the first test", async ({
  page,
  context,
}) => {
  test.setTimeout(240_000);
  const { callId, testerId, designer } = await makeTester(patternDocument());
  await query("INSERT INTO tester_contact (tester_id, name, email) VALUES ($1, 'Rosalind Invented', 'r@example.org')", [
    testerId,
  ]);
  await query(
    "INSERT INTO revision (pattern_id, number, document, reason) SELECT pattern_id, 2, $2, 'Next' FROM call WHERE id = $1",
    [callId, JSON.stringify(patternDocument())],
  );
  await signInByCookie(context, designer);

  await page.goto(`/calls/${callId}/progress`);
  await page.getByText("Test the next revision").click();
  await page.getByRole("button", { name: "New test of revision 2" }).click();
  await page.getByRole("link", { name: "invite earlier testers" }).click();
  await page.getByRole("button", { name: "Invite" }).click();
  await expect(page.getByText("Choose at least one tester first.")).toBeVisible();
  await page.getByRole("checkbox", { name: /Rosalind Invented/ }).check();
  await expectNoSidewaysScroll(page);
  await page.getByRole("button", { name: "Invite" }).click();
  await expect(page.getByRole("link", { name: /Rosalind Invented/ }).first()).toBeVisible();
  const questions = page.url().replace(/progress.*$/, "questions");

  await page.getByRole("navigation").getByRole("link", { name: "Pattern", exact: true }).click();
  await page.goto((await page.getByRole("link", { name: patternDocument().name }).first().getAttribute("href")) ?? "");
  await page.getByRole("link", { name: "Revisions" }).click();
  await page.getByRole("link", { name: "Revision 2", exact: true }).click();
  await page.getByText("Mark as published").click();
  await page.getByLabel("Version").fill("1.0");
  await page.getByLabel("Published on").fill("2090-01-01");
  await page.getByRole("button", { name: "Mark revision 2 as published" }).click();
  await expect(page.getByText("This day is still to come.")).toBeVisible();
  const today = new Intl.DateTimeFormat("en-CA", { timeZone: "Pacific/Chatham" }).format(new Date());
  await page.getByLabel("Published on").fill(today);
  await page.getByRole("button", { name: "Mark revision 2 as published" }).click();
  await expect(page.getByText("Published as version 1.0")).toBeVisible();

  await page.goto(questions);
  await page.getByText("Write a correction").click();
  await page.getByLabel("What is wrong, and what is right").fill("Work the last row once.");
  await page.getByRole("button", { name: "Publish correction" }).click();
  await expect(page.getByRole("listitem").filter({ hasText: "Work the last row once." }).first()).toBeVisible();
  await page.goto((await page.getByRole("link", { name: patternDocument().name }).first().getAttribute("href")) ?? "");
  await page.getByRole("link", { name: "Errata" }).click();
  await expect(page.getByLabel("As text")).toHaveValue(/Version 1\.0, .*, all sizes\nWork the last row once\./);
  await expectNoSidewaysScroll(page);

  await page.goto(`/calls/${callId}/progress`);
  await page.getByText("Close the test …").click();
  await page.getByRole("button", { name: "Close the test" }).click();
  await page.getByText("Archive the test …").click();
  await page.getByRole("button", { name: "Archive the test" }).click();
  await expect(page.getByText("This test is archived.")).toBeVisible();
  await page.goto("/");
  await expect(page.getByRole("link", { name: "Invented call" })).toHaveCount(0);
  await page.getByRole("link", { name: "Archived tests" }).click();
  await page.getByRole("link", { name: "Invented call" }).click();
  await page.getByRole("link", { name: "Testers", exact: true }).click();
  await page.getByRole("link", { name: "Progress" }).click();
  await page.getByRole("button", { name: "Take it back" }).click();
  await expect(page.getByRole("button", { name: "Reopen the test" })).toBeVisible();
});
