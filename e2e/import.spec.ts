import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { CALL } from "./bring-call";
import { expect, test } from "./fixtures";

test("a pattern's document that is pasted becomes a pattern", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await page.goto("/patterns/new/document");
  await page.waitForLoadState("networkidle");
  await page.getByLabel("Or paste its text").fill(JSON.stringify(saltmarshPattern));
  await page.getByRole("button", { name: "Bring it in" }).click();
  await page.waitForURL(/\/patterns\/[0-9a-f-]{36}$/);
  await expect(page.getByRole("heading", { level: 1, name: saltmarshPattern.name })).toBeVisible();
});

test("a call's document that is pasted becomes a call, and leads to its results", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await page.goto("/patterns/new/document");
  await page.waitForLoadState("networkidle");
  await page.getByLabel("Or paste its text").fill(JSON.stringify(CALL));
  await page.getByLabel("Name of the test call").fill("Spring test");
  await page.getByRole("button", { name: "Bring it in" }).click();
  await page.waitForURL(/\/calls\/[^/]+\/gaps$/);
  await expect(page.getByText("Spring test").first()).toBeVisible();
});
