import type { Page } from "@playwright/test";
import { query } from "./designer";
import { expectNoSidewaysScroll } from "./import-call";
import { expect, test } from "./fixtures";
import { importPattern, openEditor } from "./make-pattern";

/** Pastes cells as a spreadsheet gives them. */
async function pasteInto(page: Page, label: string, cells: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).evaluate((field, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", text);
    field.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, cells);
}

const saved = (page: Page) => expect(page.getByText(/Saved \d\d:\d\d/)).toBeVisible();

test("a new size takes its body from a spreadsheet, and what lists by size still need is told", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  const pattern = await importPattern(page);
  await openEditor(page, pattern, "sizes");
  await page.getByLabel("New size").fill("6X");
  await page.getByLabel("New size").press("Enter");
  await pasteInto(page, "Bust, 6X", "162\n51,5\n");
  await expect(page.getByLabel("Upper arm, 6X", { exact: true })).toHaveValue("51,5");
  // By hand: 162 less the 152 of 5X.
  await expect(page.getByRole("cell", { name: "+10.0 to 5X" }).last()).toBeVisible();
  await expect(page.getByRole("link", { name: /Grading.*to fix/ })).toBeVisible();
  await saved(page);
  await expectNoSidewaysScroll(page);

  await openEditor(page, pattern, "sizes");
  await expect(page.getByLabel("Bust, 6X", { exact: true })).toHaveValue("162");
  await expect(page.getByLabel("Upper arm, 6X", { exact: true })).toHaveValue("51,5");
});

test("an allowance takes by its word, a minus turns the word round, and a closed tab loses nothing", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  const pattern = await importPattern(page);
  await openEditor(page, pattern, "lengths");
  await page.getByLabel("New edging or seam").fill("Side seam");
  await page.getByLabel("New edging or seam").press("Enter");
  const number = page.getByLabel("Side seam, all sizes", { exact: true });
  const word = page.getByLabel("Side seam, all sizes: adds or takes");
  await expect(page.getByText("A number is missing here.")).toBeVisible();
  await number.pressSequentially("-1,5");
  await expect(number).toHaveValue("1,5");
  await expect(word).toHaveValue("takes");
  await saved(page);

  await openEditor(page, pattern, "lengths");
  await expect(number).toHaveValue("1,5");
  await expect(word).toHaveValue("takes");
  await page.getByText(/Changes since revision/).click();
  await expect(page.getByRole("row", { name: /Side seam.*takes 1.5 cm/ })).toBeVisible();
  await page.getByRole("button", { name: "Remove Neck band" }).click();
  await expect(page.getByText(/“Neck band” removed. It was used in Neck width/)).toBeVisible();
  await page.keyboard.press("Control+z");
  await expect(page.getByLabel("Neck band, all sizes", { exact: true })).toBeVisible();
});

test("what was typed after a save whose answer never came goes on from it, and is no conflict with oneself", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  const pattern = await importPattern(page);
  await openEditor(page, pattern, "lengths");
  const number = page.getByLabel("Neck band, all sizes", { exact: true });
  let arrived = () => {};
  const sent = new Promise<void>((resolve) => {
    arrived = resolve;
  });
  await page.route(/\/patterns\//, async (route) => {
    if (route.request().method() !== "POST") return await route.continue();
    await route.fetch();
    arrived();
  });
  await number.fill("3");
  await sent;
  await number.fill("4");
  await page.unrouteAll({ behavior: "ignoreErrors" });
  await page.goto("/");

  await openEditor(page, pattern, "lengths");
  await expect(number).toHaveValue("4");
  // Where the page that was left had the time to send it, it is saved before this one asks.
  const stored = `SELECT jsonb_path_query_first(typed, '$.**.allowances[*] ? (@.id == "neck-band").cm') AS cm
    FROM draft WHERE pattern_id = $1`;
  await expect.poll(async () => await query(stored, [pattern])).toEqual([{ cm: "-4" }]);
  await expect(page.getByText("saved while you were editing")).toHaveCount(0);
});

test("a gauge over 4 in is told over both widths, and is 10.16 cm and not 10", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const pattern = await importPattern(page);
  await openEditor(page, pattern, "fabrics");
  await page.getByLabel("New fabric").fill("Rib");
  await page.getByRole("button", { name: "Add the fabric" }).click();
  const card = page.getByRole("listitem").filter({ has: page.getByRole("button", { name: "Remove Rib" }) });
  await card.getByLabel("Needles").fill("3,5");
  await card.getByLabel("Stitches").fill("22");
  await card.getByLabel("Rows").fill("30");
  await card.getByLabel("over").selectOption("4 in");
  // By hand: 22 ÷ 10.16 × 10 = 21.65 and 30 ÷ 10.16 × 10 = 29.53.
  await expect(card.getByText("21.65 stitches and 29.53 rows over 10 cm")).toBeVisible();
  await expect(card.getByText("22 stitches and 30 rows over 4 in")).toBeVisible();
  await saved(page);

  await openEditor(page, pattern, "fabrics");
  await expect(card.getByLabel("over")).toHaveValue("4 in");
  await expect(card.getByLabel("Needles")).toHaveValue("3,5");
});
