import AxeBuilder from "@axe-core/playwright";
import { bringCall, expectNoSidewaysScroll } from "./bring-call";
import { expect, test } from "./fixtures";
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

test("a designer's pages keep WCAG 2.2 A and AA", async ({ page, designer }) => {
  test.setTimeout(120_000);
  expect(designer.accountId).not.toBe("");
  await expectAccessible(page, "/patterns");
  const callId = await bringCall(page);
  await page.goto(`/calls/${callId}`);
  const pattern = await page
    .getByRole("link", { name: /Saltmarsh Tee/ })
    .first()
    .getAttribute("href");
  const addresses = [
    "/account",
    "/patterns",
    "/patterns/new/document",
    "/patterns/new/paste",
    `${pattern}`,
    `${pattern}/measurements/upper-arm?size=size-2x`,
    `${pattern}/edit`,
    `${pattern}/revisions`,
    `${pattern}/revisions/1`,
    `${pattern}/reports/paste`,
    `/calls/${callId}`,
    `/calls/${callId}/gaps`,
    `/calls/${callId}/gaps?cell=size-l.neck-width`,
    `/calls/${callId}/gaps?view=table`,
    `/calls/${callId}/changes`,
    `/calls/${callId}/correct?cell=size-l.neck-width`,
    `/calls/${callId}/swatches`,
    `/calls/${callId}/testers`,
    `/calls/${callId}/testers?view=table`,
    `/calls/${callId}/yarn`,
    `/calls/${callId}/fit`,
    `/calls/${callId}/method`,
  ];
  for (const address of addresses) await expectAccessible(page, address);
});
