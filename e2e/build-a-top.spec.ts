import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./fixtures";
import { takenOver } from "./taken-over";

async function openPart(page: Page, name: string): Promise<void> {
  const parts = page.getByRole("navigation", { name: "Parts of the pattern" });
  await parts.getByRole("link", { name: new RegExp(`^${name}`) }).click();
}

async function addNamed(page: Page, what: string, ...names: readonly string[]): Promise<void> {
  for (const name of names) {
    await page.getByLabel(`New ${what}`).fill(name);
    await page.getByRole("button", { name: `Add the ${what}` }).click();
  }
}

/** The row of the list in which an item of that name stands. */
function itemOf(page: Page, name: string): Locator {
  return page.getByRole("listitem").filter({ has: page.getByRole("button", { name: `Remove ${name}` }) });
}

function numberOf(page: Page, count: string, size: string): Locator {
  return page.getByRole("textbox", { name: new RegExp(`^${count}, ${size}(, calculated)?$`) });
}

test("a new designer builds a top from nothing, has it solved, breaks a rule and is told what gives", async ({
  page,
  designer,
}) => {
  test.setTimeout(180_000);
  expect(designer.accountId).not.toBe("");
  await page.goto("/patterns/new/blank");
  await takenOver(page.getByLabel("Name of the pattern"));
  await page.getByLabel("Name of the pattern").fill("Heron vest");
  await page.getByLabel("Craft", { exact: true }).selectOption("crochet");
  await page.getByLabel("My own sizes").check();
  await page.getByRole("textbox", { name: "Sizes", exact: true }).fill("Small 86\nMedium 94\nLarge 102");
  await page.getByLabel("Gauge: stitches").fill("16");
  await page.getByLabel("and rows").fill("20");
  await page.getByLabel("Hook, in mm").fill("5");
  await page.getByRole("button", { name: "Create pattern" }).click();
  await page.waitForURL(/\/edit$/);
  await takenOver(page.getByRole("button", { name: "Undo", exact: true }));
  await expect(page.getByText("Nothing to grade yet")).toBeVisible();

  await openPart(page, "Counts and sums");
  await addNamed(page, "count of stitches", "Body", "Front", "Back");
  await addNamed(page, "count of rows", "Rows to shoulder");
  await itemOf(page, "Body").getByLabel("Multiple of").fill("6");
  await page.getByRole("button", { name: "A sum" }).click();
  const sum = itemOf(page, "sum 1");
  await sum.getByRole("button", { name: "+ and" }).click();
  for (const [at, name] of ["Body", "Front", "Back"].entries())
    await sum.getByLabel("Count", { exact: true }).nth(at).selectOption({ label: name });

  await openPart(page, "Lengths and edgings");
  await addNamed(page, "edging or seam", "Side edging");
  await page.getByLabel("Side edging, all sizes", { exact: true }).fill("1");

  await openPart(page, "Measurements");
  await page.getByRole("button", { name: "A measurement" }).click();
  await page.getByLabel("Name", { exact: true }).fill("Bust");
  await page.getByLabel("Tolerance ±").fill("2");
  await page.getByLabel("Line 1: of what").selectOption({ label: "Body" });
  await page.getByRole("button", { name: "A line" }).click();
  await page.getByLabel("Line 2: of what").selectOption({ label: "Side edging" });
  await page.getByLabel("Line 2: times").fill("2");
  await page.getByLabel("Target from").selectOption("Ease over a body measurement");
  await page.getByLabel("Body measurement").selectOption({ label: "Bust" });
  await page.getByLabel("Ease", { exact: true }).fill("8");

  await openPart(page, "Grading");
  // Rows without any target would be free: the designer types them.
  for (const size of ["Small", "Medium", "Large"]) await numberOf(page, "Rows to shoulder", size).fill("100");
  await page.getByRole("button", { name: "Calculate all", exact: true }).click();
  const solved = page.getByRole("region", { name: "Calculated numbers" });
  await solved.getByRole("button", { name: "Use these numbers" }).click();
  // By hand: 86 + 8 − 2 × 1 = 92 cm are 147.2 stitches; 144 would be 2 cm too little, 150 are 1.75 cm too much. So too
  // 162 (160) and 174 (172.8).
  for (const [size, stitches] of [
    ["Small", "150"],
    ["Medium", "162"],
    ["Large", "174"],
  ] as const)
    await expect(numberOf(page, "Body", size)).toHaveValue(stitches);
  const bust = page.getByRole("region", { name: "Finished measurements" }).getByRole("row", { name: /Bust/ });
  await expect(bust).toContainText("95.8");

  await numberOf(page, "Body", "Small").fill("152");
  await expect(page.getByText("152 is not a multiple of 6.")).toBeVisible();
  await page.getByRole("button", { name: "Lock Body, Small" }).click();
  await page.getByRole("button", { name: "Calculate unlocked numbers" }).click();
  await expect(page.getByText("“Body” is a multiple of 6 in Small.")).toBeVisible();
  await expect(page.getByText("To fix it: Unlock “Body” in Small: 150 would do.")).toBeVisible();
  await page.getByRole("button", { name: "Unlock", exact: true }).click();
  await page.getByRole("button", { name: "Calculate all", exact: true }).click();
  await solved.getByRole("button", { name: "Use these numbers" }).click();
  await expect(numberOf(page, "Body", "Small")).toHaveValue("150");

  await page.getByRole("button", { name: "Save as revision" }).click();
  await page.getByLabel("What you changed, and why").fill("Counts, sums and the bust");
  await page.getByRole("button", { name: "Save revision 2" }).click();
  await page.waitForURL(/revisions\/2$/);
  await expect(page.getByText("Counts, sums and the bust").first()).toBeVisible();
});
