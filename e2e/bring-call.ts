import { expect, type Page } from "@playwright/test";
import type { CallDocument } from "../src/engine/pattern";
import { saltmarshCall } from "../prisma/demo/saltmarsh-call";

/** The demonstration's call, whose planted faults the README tells. */
export const CALL: CallDocument = saltmarshCall().call;

/** Brings a call document in by the page, as a person pastes it, and waits for its gap page. @returns the call's id. */
export async function bringCall(page: Page, call: CallDocument = CALL): Promise<string> {
  await page.goto("/patterns/new/document");
  await page.waitForLoadState("networkidle");
  await page.getByLabel("Or paste its text").fill(JSON.stringify(call));
  await page.getByLabel("Name of the test call").fill("Spring test");
  await page.getByRole("button", { name: "Bring it in" }).click();
  await page.waitForURL(/\/calls\/[^/]+\/gaps$/);
  return page.url().split("/").at(-2) ?? "";
}

/** The very text that an export gives. */
export async function exported(page: Page, address: string): Promise<string> {
  const answer = await page.request.get(address);
  expect(answer.status()).toBe(200);
  return await answer.text();
}

/** The page itself must not scroll sideways; wide tables do so in frames of their own. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const [content, window] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  expect(content).toBeLessThanOrEqual(window ?? 0);
}
