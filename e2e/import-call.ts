import { expect, type Page } from "@playwright/test";
import type { CallDocument } from "../src/engine/pattern";
import { storeCall } from "../src/features/testing/report/document-mutations";
import { saltmarshCall } from "../prisma/demo/saltmarsh-call";
import { signedIn } from "./designer";

/** The demonstration's call, whose planted faults the README tells. */
export const CALL: CallDocument = saltmarshCall().call;

/** Long enough for an analysis that waits its turn behind those of all other tests on a busy machine. */
export const ANALYSIS_MS = 60_000;

/** What stands above or in the place of results that are being calculated; the page looks for them by itself. */
const UNDER_WAY = /^(Calculating the (results|new numbers)|Updating)$/;

/** Waits for a page's results as a person does who has it open, and does not touch it. */
export async function expectResults(page: Page): Promise<void> {
  await page.getByRole("heading", { level: 1 }).waitFor();
  await expect(page.getByText(UNDER_WAY)).toHaveCount(0, { timeout: ANALYSIS_MS });
}

/** Stores a call as the page's signed-in person, and opens its gap page. @returns the call's id. */
export async function importCall(page: Page, call: CallDocument = CALL): Promise<string> {
  const { callId } = await storeCall(await signedIn(page.context()), { call, title: "Spring test" });
  await page.goto(`/calls/${callId}/differences`);
  await expectResults(page);
  return callId;
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
