import AxeBuilder from "@axe-core/playwright";
import { bringCall, expectNoSidewaysScroll } from "./bring-call";
import { EDITOR_PARTS } from "../src/features/patterns/components/editor/editor-parts";
import { expect, test } from "./fixtures";
import { bringPattern } from "./pattern-of";
import type { Page } from "@playwright/test";

async function expectAccessible(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForLoadState("networkidle");
  const { violations } = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
    .analyze();
  const told = violations.map(
    ({ id, nodes }) =>
      `${id}: ${nodes
        .map(({ target }) => target.join(" "))
        .slice(0, 3)
        .join(", ")}`,
  );
  expect.soft(told, address).toEqual([]);
  await expectNoSidewaysScroll(page);
}

test("pages for visitors keep WCAG 2.2 A and AA", async ({ page }) => {
  for (const address of ["/", "/sign-in", "/sign-up"]) await expectAccessible(page, address);
});

test("a pattern's pages keep WCAG 2.2 A and AA", async ({ page, designer }) => {
  test.setTimeout(120_000);
  expect(designer.accountId).not.toBe("");
  await expectAccessible(page, "/patterns");
  await page.goto(`/calls/${await bringCall(page)}`);
  const pattern = await page
    .getByRole("link", { name: /Saltmarsh Tee/ })
    .first()
    .getAttribute("href");
  const addresses = [
    "/account",
    "/patterns",
    "/patterns/new/blank",
    "/patterns/new/document",
    "/patterns/new/paste",
    `${pattern}`,
    `${pattern}/measurements/upper-arm?size=size-2x`,
    `${pattern}/pieces`,
    `${pattern}/pieces?size=all`,
    `${pattern}/revisions`,
    `${pattern}/revisions/1`,
    `${pattern}/revisions/compare`,
    `${pattern}/people`,
    `${pattern}/reports/paste`,
  ];
  for (const address of addresses) await expectAccessible(page, address);
});

test("every part of a pattern's editor keeps WCAG 2.2 A and AA", async ({ page, designer }) => {
  test.setTimeout(120_000);
  expect(designer.accountId).not.toBe("");
  const editor = `/patterns/${await bringPattern(page)}/edit`;
  for (const { key } of EDITOR_PARTS) await expectAccessible(page, `${editor}?part=${key}`);
});

test("a call's pages keep WCAG 2.2 A and AA", async ({ page, designer }) => {
  test.setTimeout(120_000);
  expect(designer.accountId).not.toBe("");
  const call = `/calls/${await bringCall(page)}`;
  const addresses = [
    "",
    "/gaps",
    "/gaps?cell=size-l.neck-width",
    "/gaps?view=table",
    "/changes",
    "/correct?cell=size-l.neck-width",
    "/swatches",
    "/testers",
    "/testers?view=table",
    "/doubtful",
    "/yarn",
    "/fit",
    "/method",
  ];
  for (const address of addresses) await expectAccessible(page, `${call}${address}`);
  await expectAccessible(page, `${call}/opening`);
  await page.getByRole("button", { name: "Begin an opening" }).click();
  await expect(page.getByLabel("Title")).toBeVisible();
  await expectAccessible(page, `${call}/opening`);
  await expectAccessible(page, call.replace("/calls/", "/open-calls/"));
});
