import { randomUUID } from "node:crypto";
import { patternDocument } from "../test/factories/pattern";
import { expectNoSidewaysScroll } from "./import-call";
import { query } from "./designer";
import { expect, test } from "./fixtures";
import { openStep } from "./tester-steps";
import type { Page } from "@playwright/test";

// The page for what is not there is one that the browser tells of.
test.use({ expectedErrors: /status of 404/ });

/** A call of the designer's to which somebody is invited by hand, and the link that they get. */
async function inviteByHand(page: Page, { accountId }: { readonly accountId: string }, name: string) {
  const [patternId, callId] = [randomUUID(), randomUUID()];
  await query("INSERT INTO pattern (id) VALUES ($1)", [patternId]);
  const owns = "INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, 'owner')";
  await query(owns, [patternId, accountId]);
  const revision = "INSERT INTO revision (pattern_id, number, document, reason) VALUES ($1, 1, $2, 'First')";
  await query(revision, [patternId, JSON.stringify(patternDocument())]);
  await query("INSERT INTO call (id, pattern_id, title) VALUES ($1, $2, 'Invented call')", [callId, patternId]);
  await page.goto(`/calls/${callId}/progress/add`);
  await page.getByLabel("Name").fill(name);
  await page.getByLabel("Size", { exact: true }).selectOption({ label: "S" });
  await page.getByRole("button", { name: "Add tester" }).click();
  const link = await page.getByLabel("Link", { exact: true }).inputValue();
  return { callId, link };
}

test("somebody invited directly accepts by their link without an account, and the designer sees their progress", async ({
  page,
  designer,
  browser,
}) => {
  const { callId, link } = await inviteByHand(page, designer, "بيا 🧶");

  const context = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled: false });
  const testerPage = await context.newPage();
  await testerPage.goto(link);
  await expect(testerPage.locator('meta[name="robots"]')).toHaveAttribute("content", /noindex/);
  await expect(testerPage.getByRole("main")).toContainText("Invented Designer invites you to test Test vest in size S");
  await testerPage.getByLabel("Who wears the garment").selectOption("A child; a parent or guardian agrees");
  await testerPage.getByRole("button", { name: "Accept" }).click();
  await expect(testerPage.getByRole("heading", { name: "Make your swatch" })).toBeVisible();
  const home = testerPage.url();
  await testerPage.getByLabel("Add a note (optional)").fill("row 12?");
  await testerPage.getByRole("button", { name: "Stuck" }).click();
  await expect(testerPage.getByText(/^Last update, .*: stuck/)).toBeVisible();
  await testerPage.goto(link);
  expect(testerPage.url()).toBe(home);

  const elsewhere = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL });
  const other = await elsewhere.newPage();
  await other.goto(home);
  await expect(other.getByRole("heading", { name: "There is nothing here" })).toBeVisible();
  await other.goto(link);
  await other.getByRole("button", { name: "Open your test" }).click();
  await other.waitForURL(home);
  await expectNoSidewaysScroll(other);

  await page.goto(`/calls/${callId}/progress`);
  await expect(page.getByRole("row", { name: /بيا/ })).toContainText("stuck: “row 12?”");
  await page.getByRole("link", { name: /بيا/ }).click();
  await page.getByText("Create a new link …").click();
  await page.getByRole("button", { name: "Create a new link" }).click();
  await expect(page.getByLabel("Link", { exact: true })).not.toHaveValue(link);
  // The page for what is not there is drawn by scripts, which are off in this browser.
  expect((await testerPage.goto(home))?.status()).toBe(404);
  await Promise.all([context.close(), elsewhere.close()]);
});

test("a tester who set a password is told by their old link to sign in, and gets a new way in when they can't", async ({
  page,
  designer,
  browser,
}) => {
  const { callId, link } = await inviteByHand(page, designer, "Ines Invented");
  const context = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL });
  const tester = await context.newPage();
  await tester.goto(link);
  await tester.getByRole("button", { name: "Accept" }).click();
  await tester.getByRole("link", { name: "Set a password to sign in from any device" }).click();
  await tester.getByLabel("E-mail").fill(`${randomUUID()}@example.org`);
  await tester.getByLabel("Password").fill("a long enough password");
  await tester.getByRole("button", { name: "Set password" }).click();
  // The same for an address that has an account.
  await expect(tester.getByRole("heading", { name: "Sign in", exact: true })).toBeVisible();
  await tester.getByLabel("Password", { exact: true }).fill("a long enough password");
  await tester.getByRole("button", { name: "Sign in" }).click();
  await tester.getByRole("button", { name: "Use this account for the test" }).click();
  await expect(tester.getByRole("heading", { name: "Make your swatch" })).toBeVisible();
  const home = tester.url();
  await context.clearCookies();
  await tester.goto(link);
  await expect(tester.getByRole("main")).toContainText("You set a password for this test");
  await tester.getByRole("main").getByRole("link", { name: "Sign in" }).click();
  await expect(tester.getByRole("heading", { name: "Sign in" })).toBeVisible();

  await page.goto(`/calls/${callId}/progress`);
  await page.getByRole("link", { name: /Ines/ }).click();
  await page.getByText("They can’t sign in …").click();
  await page.getByRole("button", { name: "Create a new way in" }).click();
  await expect(page.getByLabel("Link", { exact: true })).not.toHaveValue(link);
  const newLink = await page.getByLabel("Link", { exact: true }).inputValue();
  expect((await tester.goto(link))?.status()).toBe(404);
  await tester.goto(newLink);
  await tester.getByRole("button", { name: "Open your test" }).click();
  await tester.waitForURL(home);
  await context.close();
});

test("a swatch is sent before the garment is made, and its designer sees what it would do and what comes next", async ({
  page,
  designer,
  browser,
}) => {
  const { callId, link } = await inviteByHand(page, designer, "Nuno Invented");
  const context = await browser.newContext({
    baseURL: process.env.NEXTAUTH_URL,
    viewport: { width: 360, height: 740 },
  });
  const tester = await context.newPage();
  await tester.goto(link);
  await tester.getByRole("button", { name: "Accept" }).click();
  await openStep(tester, "Swatch");
  await tester.getByLabel("Stitches", { exact: true }).fill("16");
  await tester.getByLabel("Rows or rounds").fill("25");
  await tester.getByRole("radio", { name: "Not yet" }).check();
  await expect(tester.getByText(/^At this gauge/)).toBeVisible();
  await openStep(tester, "Your counts");
  await openStep(tester, "Swatch");
  await tester.getByRole("link", { name: "Send my swatch" }).click();
  await expect(tester.getByText(/^At this gauge/)).toBeVisible();
  await tester.getByLabel("I wait for an answer before I start").check();
  await tester.getByRole("button", { name: "Send my swatch" }).click();
  await expect(tester.getByText("Your swatch is sent. Thank you.")).toBeVisible();
  await expectNoSidewaysScroll(tester);

  await page.goto(`/calls/${callId}/progress`);
  const row = page.getByRole("row", { name: /Nuno/ });
  await expect(row).toContainText("swatch sent");
  await expect(row).toContainText("waiting for your answer");
  await page.getByRole("link", { name: /Nuno/ }).click();
  await expect(page.getByRole("heading", { name: "Their report" })).toBeVisible();
  await expect(page.getByText(/^At this gauge/)).toBeVisible();
  await expect(page.getByText("16 stitches over").first()).toBeVisible();
  await expectNoSidewaysScroll(page);
  await context.close();
});
