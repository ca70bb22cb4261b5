import { expectNoSidewaysScroll, exported } from "./import-call";
import { expect, test } from "./fixtures";
import { parsePattern, type PatternDocument } from "../src/engine/pattern";
import type { Page } from "@playwright/test";
import { takenOver } from "./taken-over";

async function fillFabric(page: Page, stitches: string): Promise<void> {
  await page.getByLabel("Gauge: stitches").fill(stitches);
  await page.getByLabel("and rows").fill("24");
  await page.getByLabel("over", { exact: true }).fill("4 in");
  await page.getByLabel(/^(Hook|Needles), in mm$/).fill("4,5");
}

/** The document of the pattern whose editor is open. */
async function begun(page: Page): Promise<PatternDocument> {
  await page.waitForURL(/\/patterns\/[0-9a-f-]{36}\/edit$/);
  const address = new URL(page.url()).pathname.replace("edit", "export");
  const parsed = parsePattern(JSON.parse(await exported(page, address)));
  if (!parsed.ok) throw new Error("an export is a pattern document");
  return parsed.document;
}

test("a designer begins a pattern with sizes of a published table, and loses nothing over a slip", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  await page.goto("/patterns");
  await page.getByRole("link", { name: "New pattern" }).click();
  await page.waitForURL(/patterns\/new\/blank/);
  await takenOver(page.getByLabel("Name of the pattern"));
  await page.getByLabel("Name of the pattern").fill("Heron vest");
  await page.getByLabel("Craft", { exact: true }).selectOption("knitting");
  await page.getByLabel(/^ASTM D5585-11/).check();
  await page.getByLabel("From size").filter({ visible: true }).selectOption("4");
  await page.getByLabel("to size").filter({ visible: true }).selectOption("8");
  await page.getByLabel("Under the bust").uncheck();
  const taken = page.getByRole("region", { name: /Bodies of ASTM D5585-11/ });
  await expect(taken.getByRole("columnheader")).toHaveText(["Body measurement", "4", "6", "8"]);
  // By hand: 34 1/8, 35 1/4 and 36 1/4 in.
  await expect(taken.getByRole("row", { name: /^Bust/ }).getByRole("cell")).toHaveText(["86.7", "89.5", "92.1"]);
  await expect(taken.getByRole("rowheader", { name: /Under the bust/ })).toHaveCount(0);
  await fillFabric(page, "many");
  await page.getByRole("button", { name: "Create pattern" }).click();
  await expect(page.getByText("“many” is not a number.")).toBeVisible();
  await expect(page.getByLabel("Name of the pattern")).toHaveValue("Heron vest");
  await expect(page.getByLabel("Craft", { exact: true })).toHaveValue("knitting");
  await expect(taken.getByRole("columnheader")).toHaveText(["Body measurement", "4", "6", "8"]);
  await page.getByLabel("Gauge: stitches").fill("17 1/2");
  await expect(page.getByText(/^Usual: for 16–20 stitches of stocking stitch a 4\.5–5\.5 mm needle/)).toBeVisible();
  await expectNoSidewaysScroll(page);
  await page.getByRole("button", { name: "Create pattern" }).click();
  const pattern = await begun(page);
  expect(pattern).toMatchObject({ name: "Heron vest", craft: "knitting", sizeBy: "bust" });
  expect(pattern.sizes.map(({ label, body }) => [label, body["bust"]])).toEqual([
    ["4", 34.125 * 2.54],
    ["6", 35.25 * 2.54],
    ["8", 36.25 * 2.54],
  ]);
  expect(pattern.sizes[0]?.body["under-bust"]).toBeUndefined();
  expect(pattern.fabrics).toMatchObject([{ toolMm: 4.5, gauge: { stitches: 17.5, rows: 24, overCm: 10.16 } }]);
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });

  test("a designer creates a pattern with their own sizes, and loses nothing after an error", async ({
    page,
    designer,
  }) => {
    expect(designer.accountId).not.toBe("");
    await page.goto("/patterns/new/blank");
    await page.getByLabel("Name of the pattern").fill("Heron shawl");
    await page.getByLabel("My own sizes").check();
    await page.getByRole("textbox", { name: "Sizes", exact: true }).fill("Small 86,5\nLarge");
    await fillFabric(page, "many");
    await page.getByLabel("Worked").selectOption("round");
    await page.getByRole("button", { name: "Create pattern" }).click();
    await expect(page.getByText("“Large” is not a name and a body. Write it like M 94.")).toBeVisible();
    await expect(page.getByText("“many” is not a number.")).toBeVisible();
    await expect(page.getByLabel("My own sizes")).toBeChecked();
    await expect(page.getByLabel("Name of the pattern")).toHaveValue("Heron shawl");
    await expect(page.getByLabel("over", { exact: true })).toHaveValue("4 in");
    await expect(page.getByLabel("Worked")).toHaveValue("round");
    await page.getByRole("textbox", { name: "Sizes", exact: true }).fill("Small 86,5\nLarge 104");
    await page.getByLabel("Gauge: stitches").fill("17");
    await page.getByRole("button", { name: "Create pattern" }).click();
    const pattern = await begun(page);
    expect(pattern.sizes.map(({ label, body }) => [label, body["bust"]])).toEqual([
      ["Small", 86.5],
      ["Large", 104],
    ]);
    expect(pattern.fabrics[0]?.worked).toBe("round");
  });
});
