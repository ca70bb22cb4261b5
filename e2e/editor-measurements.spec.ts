import type { Locator, Page } from "@playwright/test";
import { expectNoSidewaysScroll } from "./import-call";
import { expect, test } from "./fixtures";
import { importPattern, openEditor } from "./make-pattern";

async function openPart(page: Page, part: "measurements"): Promise<void> {
  await openEditor(page, await importPattern(page), part);
}

function cardOf(page: Page, name: RegExp): Locator {
  return page.getByRole("listitem").filter({ has: page.getByRole("heading", { level: 3, name }) });
}

test("a measurement is built from two lines and a target, and its calculation updates while typing", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  await openPart(page, "measurements");
  await page.getByRole("button", { name: "A measurement" }).click();
  // A to H are taken.
  const card = cardOf(page, /^I |Not named yet/);
  await expect(card.getByLabel("Letter")).toHaveValue("I");
  await card.getByLabel("Line 1: of what").selectOption({ label: "Sleeve stitches at the armhole" });
  // By hand: size XL has (34.5 + 7 + 1) × 2.2 = 93.5, so 94 stitches; 94 ÷ 2.2 = 42.7 cm.
  await expect(card.getByText("so far 42.7 cm")).toBeVisible();
  await card.getByLabel("Line 1: times").fill("0,5");
  await expect(card.getByText("so far 21.4 cm")).toBeVisible();
  await card.getByRole("button", { name: "A line" }).click();
  await card.getByLabel("Line 2: of what").selectOption({ label: "Sleeve seam" });
  await card.getByLabel("Line 2: plus or minus").selectOption("less");
  await card.getByLabel("Line 2: times").fill("2");
  // The seam takes 1 cm; less twice that is 2 cm more.
  await expect(card.getByText("so far 23.4 cm")).toBeVisible();
  await card.getByLabel("Target from").selectOption("Ease over a body measurement");
  await card.getByLabel("Body measurement").selectOption({ label: "Upper arm" });
  await card.getByLabel("Multiply by").fill("0.5");
  await card.getByLabel("Ease", { exact: true }).fill("6");
  // 34.5 ÷ 2 + 6 = 23.25; 21.364 + 2 − 23.25 = 0.114.
  await expect(card.getByText("50 % of Upper arm 34.5 cm + ease 6 cm")).toBeVisible();
  await expect(card.getByText("+0.1 cm")).toBeVisible();
  await card.getByLabel("Ease: over or under the body").selectOption("under it");
  await expect(card.getByText("more than the tolerance")).toBeVisible();
  await expectNoSidewaysScroll(page);
});

test("a measurement without a line is told at its place", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await openPart(page, "measurements");
  await page.getByRole("button", { name: /^A Bust/ }).click();
  const lines = cardOf(page, /Bust/).getByRole("region", { name: "Calculation" });
  await lines.getByRole("button", { name: "Remove line 1" }).click();
  await expect(lines.getByText("▲ This must hold at least one term.")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(lines.getByText("at least one term")).toBeHidden();
});
