import type { Locator } from "@playwright/test";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { importCall, exported } from "./import-call";
import { expect, test } from "./fixtures";
import { takenOver } from "./taken-over";

test("a pattern's document that is pasted becomes a pattern", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await page.goto("/patterns/new/document");
  await takenOver(page.getByLabel("Or paste its text"));
  await page.getByLabel("Or paste its text").fill(JSON.stringify(saltmarshPattern));
  await page.getByRole("button", { name: "Import file" }).click();
  await page.waitForURL(/\/patterns\/[0-9a-f-]{36}$/);
  await expect(page.getByRole("heading", { level: 1, name: saltmarshPattern.name })).toBeVisible();
});

/** As people do; typed in by the browser line by line, so much text takes a minute. */
async function paste(field: Locator, text: string): Promise<void> {
  const page = field.page();
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  await field.focus();
  await page.keyboard.press("ControlOrMeta+v");
  await expect(field).not.toHaveValue("");
}

test("a call that is exported and pasted again is the same call, byte for byte", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const text = await exported(page, `/calls/${await importCall(page)}/export`);
  await page.goto("/patterns/new/document");
  await takenOver(page.getByLabel("Or paste its text"));
  await paste(page.getByLabel("Or paste its text"), text);
  await page.getByLabel("Name of the test").fill("Spring test");
  await page.getByRole("button", { name: "Import file" }).click();
  await page.waitForURL(/\/calls\/[^/]+\/differences$/);
  expect(await exported(page, page.url().replace(/differences$/, "export"))).toBe(text);
});
