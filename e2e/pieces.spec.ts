import type { Page } from "@playwright/test";
import type { CallDocument } from "../src/engine/pattern";
import { importCall, CALL, expectNoSidewaysScroll, exported } from "./import-call";
import { piecedPattern } from "../test/factories/pieced-pattern";
import { query } from "./designer";
import { expect, test } from "./fixtures";
import { letIn, makeTester } from "./make-tester";

/** Brings a call in and finds its pattern. @returns the pattern's address. */
async function patternOf(page: Page, call: CallDocument = CALL): Promise<string> {
  await page.goto(`/calls/${await importCall(page, call)}`);
  const href = await page
    .getByRole("link", { name: /Saltmarsh Tee/ })
    .first()
    .getAttribute("href");
  return href ?? "";
}

test("every piece is drawn and its shaping told, in one size and in all of them", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const pattern = await patternOf(page);
  await page.goto(pattern);
  await page.getByRole("link", { name: "Pieces", exact: true }).click();
  await page.getByRole("link", { name: "M", exact: true }).click();
  const sleeve = page.getByRole("img", { name: /^Sleeve in M/ });
  await expect(sleeve).toBeVisible();
  // By hand: 82 − 70 = 12 stitches are 6 at each end; 19 cm are 57 rows.
  const words =
    "Work 57 rows; decrease 1 stitch at each end, spread evenly over every other row, 6 times. 70 stitches.";
  await expect(page.getByText(words).first()).toBeVisible();
  await expect(page.getByRole("table", { name: "Measured on Sleeve in M" })).toContainText("Upper arm");
  await page.getByRole("link", { name: "All sizes" }).click();
  await expect(page.getByRole("img", { name: /^Sleeve in all sizes/ })).toBeVisible();
  await expect(page.getByText(/^Pick up 72 \(.*, 124\) stitches along “front-right-armhole”/)).toBeVisible();
  await page.setViewportSize({ width: 360, height: 800 });
  await expectNoSidewaysScroll(page);
});

test("the drawing to print is a sound SVG document of a stated size", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const label = `Front <b> & "so" on`;
  const pieces = CALL.pattern.garment.pieces.map((piece) => (piece.id === "back" ? { ...piece, label } : piece));
  const garment = { ...CALL.pattern.garment, pieces };
  const pattern = await patternOf(page, { ...CALL, pattern: { ...CALL.pattern, garment } });
  await page.goto(`${pattern}/pieces?size=size-m`);
  const print = await page.getByRole("link", { name: "Print schematics" }).getAttribute("href");
  const text = await exported(page, print ?? "");
  const read = await page.evaluate((markup) => {
    const { documentElement } = new DOMParser().parseFromString(markup, "image/svg+xml");
    return {
      name: documentElement.nodeName,
      width: documentElement.getAttribute("width"),
      words: documentElement.textContent,
    };
  }, text);
  expect(read).toMatchObject({ name: "svg", width: "210mm" });
  expect(read.words).toContain(label);
  expect((await page.request.get(`${pattern}/drawing.svg?size=no-such-size`)).status()).toBe(404);
});

test("a step that cannot be worked is told at its place, and on top with its size", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const { grading } = CALL.pattern;
  const side = { ...grading?.["front-side"], "size-m": 40 };
  const pattern = await patternOf(page, {
    ...CALL,
    pattern: { ...CALL.pattern, grading: { ...grading, "front-side": side } },
  });
  await page.goto(`${pattern}/pieces`);
  await expect(page.getByText("Some parts cannot be worked as described")).toBeVisible();
  await page.getByRole("status").getByRole("link", { name: "M", exact: true }).click();
  await expect(
    page
      .getByText(/“front” has 114 stitches, and 40 \+ 38 \+ 40 = 118 are divided\./)
      .filter({ visible: true })
      .first(),
  ).toBeVisible();
  await expect(page.getByRole("img", { name: /^Body in M/ })).toBeVisible();
});

test("a tester of one piece finds that piece alone drawn and measured on the pattern’s page", async ({
  page,
  context,
}) => {
  const tester = await makeTester(piecedPattern());
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}/pattern`);
  await expect(page.getByRole("img", { name: /^Body in S/ })).toBeVisible();
  await expect(page.getByRole("region", { name: "Your numbers, S" })).toContainText("Height");
  await query("UPDATE call SET pieces = '{sleeve}' WHERE id = $1", [tester.callId]);
  await page.reload();
  await expect(page.getByText("You make only: Sleeve.")).toBeVisible();
  await expect(page.getByRole("img", { name: /^Sleeve in S/ })).toBeVisible();
  await expect(page.getByRole("img", { name: /^Body in S/ })).toHaveCount(0);
  await expect(page.getByRole("region", { name: "Finished measurements" })).toContainText("upper-arm");
  await expect(page.getByRole("region", { name: "Finished measurements" })).not.toContainText("armhole");
  await expect(page.getByRole("region", { name: "Your numbers, S" })).not.toContainText("Height");
});
