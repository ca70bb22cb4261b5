import { expect, type Locator, type Page } from "@playwright/test";
import { z } from "zod";
import { query } from "./designer";
import type { MadeTester } from "./make-tester";

/** Longer than a form waits before it saves, and than the page takes to be drawn again. */
const PAUSE_MS = 2_500;

/** Opens a step as a tester does: by its link in the list of steps, on the home page or beside another step. */
export async function openStep(page: Page, step: string): Promise<void> {
  const link = page.getByRole("link", { name: new RegExp(`^(not started|started|done|needs fixing): ${step}`) });
  const address = await link.getAttribute("href");
  await link.click();
  await page.waitForURL(({ pathname }) => pathname === address);
}

/** Enters a washed swatch at the pattern's gauge, from a tester's home page. */
export async function enterSwatch(page: Page): Promise<void> {
  await openStep(page, "Swatch");
  await page.getByLabel("Stitches", { exact: true }).pressSequentially("22", { delay: 40 });
  await page.getByLabel("Rows or rounds").pressSequentially("30", { delay: 40 });
  await page.getByRole("radio", { name: "Yes" }).check();
}

/** Opens a measurement in the list of all measurements. */
export async function openMeasurement(page: Page, label: string): Promise<void> {
  const row = rowOf(page, label);
  if ((await row.getAttribute("aria-expanded")) !== "true") await row.click();
  await expectOpen(page, label);
}

/** A measurement is open, and no other one. */
export async function expectOpen(page: Page, label: string): Promise<void> {
  await expect(rowOf(page, label)).toHaveAttribute("aria-expanded", "true");
  await expect(page.locator('#content [aria-expanded="true"]')).toHaveCount(1);
  await expect(page.getByLabel(tapeLabel(label)).or(page.getByLabel(tapeLabel(label, 1)))).toBeVisible();
}

/** The line of a measurement in the list, which opens and closes it. */
export function rowOf(page: Page, label: string): Locator {
  const list = page.getByRole("list", { name: "All measurements" });
  return list.getByRole("button", { name: new RegExp(`: *[A-Z]\\d*\\s*${label}`) });
}

/** The label of a measurement's field. @param reading its number where there are several. */
export function tapeLabel(measurement: string, reading?: number): string {
  return `What the tape says${reading === undefined ? "" : `, reading ${reading}`} for ${measurement}`;
}

/** Opens the fields behind a line that tells their present values. */
export async function unfold(page: Page, summary: RegExp): Promise<void> {
  await page.locator("summary").filter({ hasText: summary }).click();
}

/** Back to the tester's home page, by the link above each step. */
export async function goHome(page: Page): Promise<void> {
  await page.getByRole("link", { name: /^← Your test of/ }).click();
  await expect(page.getByRole("heading", { name: "All steps" })).toBeVisible();
}

/** Types like somebody who holds a tape: one key, a look at the tape, the rest. */
export async function typeSlowly(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).first().click();
  await page.keyboard.type(text.slice(0, 1));
  await page.waitForTimeout(PAUSE_MS);
  await page.keyboard.type(text.slice(1));
  await page.waitForTimeout(PAUSE_MS);
}

/** The events when somebody puts the phone away and picks it up again. */
export async function lookAwayAndBack(page: Page): Promise<void> {
  for (const state of ["hidden", "visible"])
    await page.evaluate((now) => {
      Object.defineProperty(document, "visibilityState", { configurable: true, get: () => now });
      document.dispatchEvent(new Event("visibilitychange"));
    }, state);
}

/** The fields of a tester's draft whose names match, as stored. */
export async function storedFields({ testerId }: MadeTester, name: RegExp): Promise<Record<string, string>> {
  const rows = await query("SELECT key, value FROM report_draft, jsonb_each_text(typed) WHERE tester_id = $1", [
    testerId,
  ]);
  const fields = z.array(z.object({ key: z.string(), value: z.string() })).parse(rows);
  return Object.fromEntries(fields.flatMap(({ key, value }) => (name.test(key) ? [[key, value]] : [])));
}
