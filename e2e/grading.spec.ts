import { expectNoSidewaysScroll } from "./import-call";
import { expect, test } from "./fixtures";
import { importPattern, openEditor } from "./make-pattern";
import type { Locator, Page } from "@playwright/test";

function numberOf(page: Page, count: string, size: string): Locator {
  return page.getByRole("textbox", { name: new RegExp(`^${count}, ${size}(, calculated)?$`) });
}

test("a number that breaks its rules says so while it is typed, with the nearest that keep them; undo takes it back", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  await openEditor(page, await importPattern(page));
  const body = numberOf(page, "Body stitches", "M");
  await body.fill("230");
  await expect(page.getByText("230 is not a multiple of 4.")).toBeVisible();
  await expect(page.getByText("230 and 228 must meet.").first()).toBeVisible();
  // 232 is a multiple of 4 too, but twice 114 is 228.
  await page.getByRole("button", { name: "228", exact: true }).click();
  await expect(body).toHaveValue("228");
  await expect(page.getByText("230 is not a multiple of 4.")).toBeHidden();
  await body.fill("many");
  await expect(page.getByText(/“many” is not a number/)).toBeVisible();
  await expectNoSidewaysScroll(page);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(body).toHaveValue("228");
  await page.keyboard.press("Control+z");
  await expect(body).toHaveValue("230");
  await page.getByRole("button", { name: "Redo" }).click();
  await expect(body).toHaveValue("228");
});

test("cells from a spreadsheet go into the table, and the arrows walk it", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await openEditor(page, await importPattern(page));
  await numberOf(page, "Neck stitches", "S").focus();
  await page.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "61\t63\n24\t27");
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }),
    );
  });
  await expect(numberOf(page, "Neck stitches", "S")).toHaveValue("61");
  await expect(numberOf(page, "Neck stitches", "M")).toHaveValue("63");
  await expect(numberOf(page, "Shoulder stitches", "M")).toHaveValue("27");
  await page.keyboard.press("ArrowDown");
  await expect(numberOf(page, "Shoulder stitches", "S")).toBeFocused();
});

test("all that is not locked is solved, from closest to most even; what is taken survives a closed tab", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  const patternId = await importPattern(page);
  await openEditor(page, patternId);
  await numberOf(page, "Sleeve rows above the rib", "M").fill("60");
  await page.getByRole("button", { name: "Lock Sleeve rows above the rib, M" }).click();
  await page.getByRole("button", { name: "Calculate unlocked numbers" }).click();
  const solved = page.getByRole("region", { name: "Calculated numbers" });
  await expect(solved.getByText("Closest to target measurements", { exact: true })).toBeVisible();
  await expect(solved.getByText("Most even steps", { exact: true })).toBeVisible();
  await expect(solved.getByText("These are the best possible numbers.").first()).toBeVisible();
  const between = solved.getByRole("slider", { name: "Between closest to target and most even" });
  const unevenness = async () =>
    Number(/(\d+) stitches and rows/.exec((await between.getAttribute("aria-valuetext")) ?? "")?.[1]);
  const closest = await unevenness();
  await between.focus();
  await page.keyboard.press("End");
  expect(await unevenness()).toBeLessThan(closest);
  const stated = solved
    .getByRole("row", { name: /^Body stitches/ })
    .or(solved.getByText("These are the numbers that you have."));
  await expect(stated).toBeVisible();
  await solved.getByRole("button", { name: "Use these numbers" }).click();
  await expect(solved).toBeHidden();
  await expect(numberOf(page, "Sleeve rows above the rib", "M")).toHaveValue("60");
  await expect(page.getByRole("textbox", { name: "Body stitches, M, calculated" })).toBeVisible();
  const body = await numberOf(page, "Body stitches", "M").inputValue();
  await expect(page.getByText(/Saved \d\d:\d\d/)).toBeVisible();
  await openEditor(page, patternId);
  await expect(page.getByRole("textbox", { name: "Body stitches, M, calculated" })).toHaveValue(body);
  await expect(page.getByRole("button", { name: "Lock Sleeve rows above the rib, M" })).toHaveAttribute(
    "aria-pressed",
    "true",
  );
});

test("what is typed is saved while a grading is waited for", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const patternId = await importPattern(page);
  await openEditor(page, patternId);
  await expect(page).toHaveTitle(/^Edit · .+ · Sizewright$/);
  let answer = (): void => undefined;
  const held = new Promise<void>((resolve) => {
    answer = resolve;
  });
  await page.route(`**/patterns/${patternId}/gradings/*`, async (route) => {
    await held;
    await route.continue();
  });
  const asked = page.waitForRequest(`**/patterns/${patternId}/gradings/*`);
  await page.getByRole("button", { name: "Calculate all", exact: true }).click();
  expect((await asked).method()).toBe("GET");
  await numberOf(page, "Sleeve rows above the rib", "M").fill("60");
  await expect(page.getByText(/Saved \d\d:\d\d/)).toBeVisible();
  answer();
  await expect(page.getByRole("region", { name: "Calculated numbers" })).toBeVisible();
});

test("where no numbers keep every rule, the rules that clash are named, with a way out of each", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  await openEditor(page, await importPattern(page));
  await numberOf(page, "Body stitches", "M").fill("230");
  await page.getByRole("button", { name: "Lock Body stitches, M" }).click();
  await page.getByRole("button", { name: "Calculate unlocked numbers" }).click();
  await expect(page.getByText("“Body stitches” is locked at 230 in M.")).toBeVisible();
  await expect(page.getByText("“Body stitches” is a multiple of 4 in M.")).toBeVisible();
  await expect(page.getByText(/To fix it: Unlock “Body stitches” in M: \d+ would do./)).toBeVisible();
  await page.getByRole("button", { name: "Unlock", exact: true }).click();
  await page.getByRole("button", { name: "Calculate all", exact: true }).click();
  await expect(page.getByRole("region", { name: "Calculated numbers" })).toBeVisible();
});
