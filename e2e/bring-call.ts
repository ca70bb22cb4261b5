import { expect, type Page } from "@playwright/test";
import type { CallDocument } from "../src/engine/pattern";
import { saltmarshCall } from "../prisma/demo/saltmarsh-call";

/** The demonstration's call, whose planted faults the README tells. */
export const CALL: CallDocument = saltmarshCall().call;

/** Long enough for an analysis that waits its turn behind those of all other tests on a busy machine. */
export const ANALYSIS_MS = 60_000;

/** What stands in the place of results that are not there yet; the page looks for them again by itself. */
const UNDER_WAY = /^Sizewright is working out/;

/** Waits for a page's results as a person does who has it open, and does not touch it. */
export async function expectResults(page: Page): Promise<void> {
  await page.getByRole("heading", { level: 1 }).waitFor();
  await expect(page.getByText(UNDER_WAY)).toHaveCount(0, { timeout: ANALYSIS_MS });
}

/** Brings a call document in by the page, as a person pastes it, and waits for its results. @returns the call's id. */
export async function bringCall(page: Page, call: CallDocument = CALL): Promise<string> {
  await page.goto("/patterns/new/document");
  await page.waitForLoadState("networkidle");
  await page.getByLabel("Or paste its text").fill(JSON.stringify(call));
  await page.getByLabel("Name of the test call").fill("Spring test");
  await page.getByRole("button", { name: "Bring it in" }).click();
  await page.waitForURL(/\/calls\/[^/]+\/gaps$/);
  await expectResults(page);
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
