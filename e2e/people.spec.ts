import { randomUUID } from "node:crypto";
import type { Browser, Page } from "@playwright/test";
import type { PatternDocument } from "../src/engine/pattern";
import { patternDocument } from "../test/factories/pattern";
import { expectNoSidewaysScroll } from "./import-call";
import { makeDesigner, query, signInByCookie, type Designer } from "./designer";
import { expect, test } from "./fixtures";

const PASSWORD = "a long enough password";

// The page for what is not there is one that the browser tells of.
test.use({ expectedErrors: /status of 404/ });

/** A pattern of somebody's, with a revision a document. */
async function makePattern(owner: Designer, documents: readonly PatternDocument[]): Promise<string> {
  const patternId = randomUUID();
  await query("INSERT INTO pattern (id) VALUES ($1)", [patternId]);
  await query("INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, 'owner')", [
    patternId,
    owner.accountId,
  ]);
  const revision =
    "INSERT INTO revision (pattern_id, number, document, reason, created_by_id) VALUES ($1, $2, $3, $4, $5)";
  for (const [at, document] of documents.entries())
    await query(revision, [patternId, at + 1, JSON.stringify(document), `Reason ${at + 1}`, owner.accountId]);
  return patternId;
}

/** Makes a link as an owner does on the page. */
async function invite(page: Page, patternId: string, may: "Can edit" | "Can view"): Promise<string> {
  await page.goto(`/patterns/${patternId}/people`);
  await page.getByRole("radio", { name: new RegExp(`^${may}`) }).check();
  await page.getByRole("button", { name: "Create link" }).click();
  return await page.getByLabel("The link").inputValue();
}

/** A page of another person's browser; of a visitor's where nobody is named. */
async function pageOf(browser: Browser, person: Designer | null, options = {}): Promise<Page> {
  const context = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, ...options });
  if (person !== null) await signInByCookie(context, person);
  return await context.newPage();
}

test("a helper comes in by a link, edits, only looks, and is removed", async ({ page, designer, browser }) => {
  test.setTimeout(90_000);
  const patternId = await makePattern(designer, [patternDocument()]);
  await page.goto(`/patterns/${patternId}`);
  await page.getByRole("link", { name: "People" }).click();
  await expect(page.getByText("Only you have access so far.")).toBeVisible();
  await page.getByRole("radio", { name: /^Can edit/ }).check();
  await page.getByLabel("Note (optional)").fill("x".repeat(201));
  await page.getByRole("button", { name: "Create link" }).click();
  await expect(page.getByText("Keep the note under 200 characters.")).toBeVisible();
  await expect(page.getByRole("radio", { name: /^Can edit/ })).toBeChecked();
  await page.getByLabel("Note (optional)").fill("the technical editor");
  await page.getByRole("button", { name: "Create link" }).click();
  const link = await page.getByLabel("The link").inputValue();
  await expect(page.getByRole("listitem").filter({ hasText: "the technical editor" })).toBeVisible();
  await page.reload();
  await expect(page.getByLabel("The link")).toHaveCount(0);

  const helper = await pageOf(browser, null);
  const answer = await helper.goto(link);
  expect(answer?.headers()["cache-control"]).toContain("no-store");
  await expect(helper.locator('meta[name="robots"]')).toHaveAttribute("content", /noindex/);
  await expect(helper.getByRole("main")).toContainText(
    "Invented Designer invites you to help with the pattern Test vest",
  );
  await expect(helper.getByRole("main")).not.toContainText("the technical editor");
  await helper.getByRole("link", { name: "Create an account" }).click();
  const email = `${randomUUID()}@example.org`;
  await helper.getByLabel("Name").fill("Invented Helper");
  await helper.getByLabel("E-mail").fill(email);
  await helper.getByLabel("Password", { exact: true }).fill(PASSWORD);
  await helper.getByRole("button", { name: "Create account" }).click();
  await expect(helper.getByText(`You are signed in as Invented Helper (${email}).`)).toBeVisible();
  // Looking takes nothing.
  await helper.reload();
  await helper.getByRole("button", { name: "Accept invitation" }).click();
  await helper.waitForURL(`**/patterns/${patternId}`);
  await expect(helper.getByRole("link", { name: "Edit pattern" })).toBeVisible();
  await helper.goto(link);
  await expect(helper.getByRole("heading", { name: "Test vest" })).toBeVisible();
  await helper.getByRole("link", { name: "People" }).click();
  await expect(helper.getByRole("listitem").filter({ hasText: "Invented Helper (you)" })).toContainText("Can edit");
  await expect(helper.getByRole("button", { name: "Create link" })).toHaveCount(0);
  await expect(helper.getByRole("button", { name: /Remove/ })).toHaveCount(0);

  await page.reload();
  await expect(page.getByText("Unused links")).toHaveCount(0);
  await page.getByRole("button", { name: /Make view-only.*Invented Helper/ }).click();
  await expect(page.getByRole("button", { name: /Allow editing.*Invented Helper/ })).toBeVisible();
  await helper.goto(`/patterns/${patternId}`);
  await expect(helper.getByRole("link", { name: "Edit pattern" })).toHaveCount(0);

  await page.getByText("Remove …").click();
  await page.getByRole("button", { name: /Remove.*Invented Helper/ }).click();
  await expect(page.getByText("Only you have access so far.")).toBeVisible();
  await helper.reload();
  await expect(helper.getByRole("heading", { name: "There is nothing here" })).toBeVisible();
  await helper.goto("/patterns");
  await expect(helper.getByRole("heading", { name: "No patterns yet" })).toBeVisible();
  await helper.goto(link);
  await expect(helper.getByText("You accepted this invitation before, but no longer have access")).toBeVisible();
  await helper.context().close();
});

test("a link that cannot be taken says why, and the same for one that never was", async ({
  page,
  designer,
  browser,
}) => {
  const patternId = await makePattern(designer, [patternDocument()]);
  const link = await invite(page, patternId, "Can view");
  await page.goto(link);
  await expect(page.getByText("This invites someone to your own pattern")).toBeVisible();
  const [bea, sam] = [await makeDesigner(), await makeDesigner()];
  const beasPage = await pageOf(browser, bea);
  const samsPage = await pageOf(browser, sam);
  await samsPage.goto(link);
  await beasPage.goto(link);
  await beasPage.getByRole("button", { name: "Accept invitation" }).click();
  await beasPage.waitForURL(`**/patterns/${patternId}`);
  // Sam's page is out of date by now.
  await samsPage.getByRole("button", { name: "Accept invitation" }).click();
  await expect(samsPage.getByText("Someone has already used this invitation")).toBeVisible();
  await expect(samsPage.getByRole("main")).not.toContainText("Test vest");

  const more = await invite(page, patternId, "Can edit");
  await beasPage.goto(more);
  await expect(beasPage.getByText("You can view it already; with this you can")).toBeVisible();
  await query(
    "UPDATE invitation SET created_at = now() - interval '15 days', expires_at = now() WHERE accepted_at IS NULL AND pattern_id = $1",
    [patternId],
  );
  await beasPage.getByRole("button", { name: "Accept invitation" }).click();
  await expect(beasPage.getByText("This invitation expired on")).toBeVisible();
  await page.goto(`/patterns/${patternId}/people`);
  await expect(page.getByText(/expired .*: create a new link/)).toBeVisible();
  await page.getByRole("button", { name: /Remove from list/ }).click();
  await expect(page.getByText("Unused links")).toHaveCount(0);
  await beasPage.reload();
  await expect(beasPage.getByText("This invitation has been withdrawn")).toBeVisible();

  const visitor = await pageOf(browser, null);
  await visitor.goto(link);
  await expect(visitor.getByText("If it was you, sign in.")).toBeVisible();
  const seen: string[] = [];
  for (const token of ["x", link.slice(0, -1).split("/").at(-1), "A".repeat(43)]) {
    const answer = await visitor.goto(`/invitations/${token}`);
    expect(answer?.status()).toBe(404);
    seen.push(`${await visitor.title()} ${await visitor.getByRole("main").innerText()}`);
  }
  expect(seen[0]).toContain("Invitation not found");
  expect(new Set(seen).size).toBe(1);
  await Promise.all([beasPage, samsPage, visitor].map((each) => each.context().close()));
});

test("inviting, taking and comparing work without JavaScript", async ({ browser }) => {
  const [owner, bea] = [await makeDesigner(), await makeDesigner()];
  const later = patternDocument({ grading: { width: { small: 98, large: 120 }, height: { small: 100, large: 110 } } });
  const patternId = await makePattern(owner, [patternDocument(), later, patternDocument()]);
  const owners = await pageOf(browser, owner, { javaScriptEnabled: false });
  const beas = await pageOf(browser, bea, { javaScriptEnabled: false });
  await beas.goto(await invite(owners, patternId, "Can view"));
  await beas.getByRole("button", { name: "Accept invitation" }).click();
  await beas.waitForURL(`**/patterns/${patternId}`);
  await beas.getByRole("link", { name: "Revisions" }).click();
  await beas.getByRole("link", { name: "Compare revision 3 with another" }).click();
  await expect(beas.getByLabel("From revision")).toHaveValue("2");
  await beas.getByLabel("From revision").selectOption("1");
  await beas.getByLabel("To revision").selectOption("2");
  await beas.getByRole("button", { name: "Compare" }).click();
  await expect(beas.getByRole("row", { name: /Width.*98.*118.*120/ })).toBeVisible();
  await beas.goto(`/patterns/${patternId}/people`);
  await beas.getByText("Leave this pattern …").click();
  await beas.getByRole("button", { name: "Leave" }).click();
  await expect(beas.getByRole("heading", { name: "No patterns yet" })).toBeVisible();
  await Promise.all([owners, beas].map((each) => each.context().close()));
});

test("any two revisions are compared part by part", async ({ page, designer }) => {
  const [bust, length] = patternDocument().measurements;
  const first = patternDocument({ instructions: "Chain 98.\nWork even.\nFasten off." });
  const second = patternDocument({
    instructions: "Chain 100.\nWork even.\nFasten off.\nBlock.",
    grading: { width: { small: 100, large: 118 }, height: { small: 100, large: 110 } },
    allowances: [{ id: "edging", label: "Edging", cm: 1.5 }],
    measurements: [
      ...(bust ? [{ ...bust, toleranceCm: 3, terms: [{ times: 2, count: "width" }] }] : []),
      ...(length ? [length] : []),
    ],
  });
  const patternId = await makePattern(designer, [first, second, second]);
  const compare = `/patterns/${patternId}/revisions/compare`;
  await page.goto(compare);
  await expect(page.getByText("Both revisions have the same content.")).toBeVisible();
  await page.goto(`${compare}?from=1&to=2`);
  await expect(page.getByRole("row", { name: /Width.*98.*becomes.*100/ })).toBeVisible();
  await expect(page.getByRole("row", { name: /Edging.*adds 1 cm.*becomes.*adds 1.5 cm, in every size/ })).toBeVisible();
  // By hand: twice 100 stitches at 20 to 10 cm, the edging no longer in it, are 100 cm in S, and 118 are 118 in L, before 120.
  await expect(page.getByRole("row", { name: /A Bust.*100.0.*120.0.*becomes.*118.0/ })).toBeVisible();
  const terms = page.getByRole("list", { name: "How A Bust is calculated" });
  await expect(terms.locator("del")).toHaveText("2 × Edging, what it adds or takes");
  await expect(terms.getByText("Removed")).toBeVisible();
  const text = page.getByRole("list", { name: "Written instructions, line by line" });
  await expect(text.locator("del")).toHaveText("removed: 98");
  await expect(text.locator("ins")).toHaveText(["added: 100", "Block."]);
  await expect(page.getByRole("row", { name: /Tolerance of Bust.*2 cm.*3 cm/ })).toBeVisible();
  await expectNoSidewaysScroll(page);
  await page.getByRole("link", { name: "Swap" }).click();
  await expect(page.getByRole("row", { name: /Width.*100.*becomes.*98/ })).toBeVisible();
  await expect(page.getByLabel("From revision")).toHaveValue("2");
  await page.goto(`${compare}?from=2&to=2`);
  await expect(page.getByText("Both are revision 2.")).toBeVisible();
  await page.goto(`${compare}?from=77`);
  await expect(page.getByText("There is no revision “77” of this pattern. Choose from 1 to 3.")).toBeVisible();
});
