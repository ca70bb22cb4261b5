import type { Page } from "@playwright/test";
import type { PatternDocument } from "../src/engine/pattern";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";

/** Brings a pattern document in by the page, as a person pastes it. @returns the pattern's id. */
export async function bringPattern(page: Page, pattern: PatternDocument = saltmarshPattern): Promise<string> {
  await page.goto("/patterns/new/document");
  await page.waitForLoadState("networkidle");
  await page.getByLabel("Or paste its text").fill(JSON.stringify(pattern));
  await page.getByRole("button", { name: "Bring it in" }).click();
  await page.waitForURL(/\/patterns\/[0-9a-f-]{36}$/);
  return page.url().split("/").at(-1) ?? "";
}

export async function openEditor(page: Page, patternId: string, part = "grading"): Promise<void> {
  await page.goto(`/patterns/${patternId}/edit?part=${part}`);
  await page.waitForLoadState("networkidle");
}
