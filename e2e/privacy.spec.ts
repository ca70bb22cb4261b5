import { readFile } from "node:fs/promises";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { makeDesigner, query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { publishListing } from "./make-open-call";
import { letIn, makeTester } from "./make-tester";
import { violations } from "./violations";

const PASSWORD = "a long enough password";

test("a tester sees who looked, takes their data along, and a designer deletes the account once nobody is at work", async ({
  page,
  context,
  browser,
}) => {
  test.setTimeout(150_000);
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  const { testerId, callId, designer } = tester;
  await query("INSERT INTO tester_contact (tester_id, name) VALUES ($1, 'Rosalind Invented')", [testerId]);
  await publishListing(callId);
  const phone = await browser.newContext({
    baseURL: process.env.NEXTAUTH_URL,
    viewport: { width: 360, height: 740 },
  });
  await letIn(phone, tester);
  const their = await phone.newPage();
  await their.goto(`/testing/${testerId}/your-data`);
  await expect(their.getByText("Nobody has looked at it in the last year.")).toBeVisible();

  await signInByCookie(context, designer);
  await page.goto(`/calls/${callId}/progress/${testerId}`);
  await expect(page.getByRole("heading", { name: "Rosalind Invented" })).toBeVisible();
  // The note follows the answer.
  await expect(async () => {
    await their.reload();
    await expect(their.getByText(`${designer.name} looked at your page.`)).toBeVisible({ timeout: 1_000 });
  }).toPass();
  await expectNoSidewaysScroll(their);
  expect(await violations(their)).toEqual([]);
  const [download] = await Promise.all([
    their.waitForEvent("download"),
    their.getByRole("link", { name: "Download your data" }).click(),
  ]);
  const file = await readFile(await download.path(), "utf8");
  expect(file).toContain("Rosalind Invented");
  expect(file).toContain(designer.name);
  await their.getByRole("link", { name: "privacy notice" }).click();
  await expect(their.getByRole("heading", { level: 1, name: "Privacy notice" })).toBeVisible();
  await expect(their.getByRole("main")).toContainText("Until 12 months after the test is closed.");
  await expectNoSidewaysScroll(their);
  await phone.close();

  await page.goto("/account");
  await page.getByRole("link", { name: "Your data", exact: true }).click();
  await page.getByRole("link", { name: "Delete your account" }).click();
  await expect(page.getByRole("main")).toContainText("“Invented call” is running, with 1 tester who is not finished.");
  await expect(page.getByLabel("Your password")).toHaveCount(0);
});

test("an account is deleted by its password, after it was said what goes", async ({ page, context }) => {
  const designer = await makeDesigner({ password: PASSWORD });
  await signInByCookie(context, designer);
  await page.goto("/account/delete");
  await expect(page.getByRole("main")).toContainText("Your name, your e-mail address and your password.");
  await page.getByLabel("Your password").fill("not this one at all");
  await page.getByRole("button", { name: "Delete my account" }).click();
  await expect(page.getByText("This is not your current password.")).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await page.getByLabel("Your password").fill(PASSWORD);
  await page.getByRole("button", { name: "Delete my account" }).click();
  await expect(page.getByRole("heading", { name: "Your account is deleted" })).toBeVisible();
  expect(await query("SELECT id FROM account WHERE email = $1", [designer.email])).toEqual([]);
});
