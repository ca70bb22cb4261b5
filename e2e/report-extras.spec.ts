import type { Locator } from "@playwright/test";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester } from "./make-tester";
import { enterSwatch, openStep, unfold } from "./tester-steps";

test("blocking, the yarn's name, strands and preferred fit are told on the way and read by the designer", async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await enterSwatch(page);
  await unfold(page, /^Blocking: not answered/);
  await page.getByRole("group", { name: "How the swatch was blocked" }).getByText("steamed").click();
  await expect(page.getByText("Blocking: steamed")).toBeVisible();
  await unfold(page, /^Before blocking: not counted/);
  await page.getByLabel("Unblocked stitches").fill("22");
  await page.getByLabel("Unblocked rows").fill("31.5");
  await expect(page.getByText("Before blocking: 22 stitches, 31.5 rows")).toBeVisible();
  await openStep(page, "Measurements");
  await unfold(page, /^Blocking: not answered/);
  await page.getByRole("group", { name: "How the garment was blocked" }).getByText("wet").click();
  const differs = "The swatch was steamed, the garment wet-blocked: their gauge can differ.";
  await expect(page.getByText(differs)).toBeVisible();
  await expectNoSidewaysScroll(page);
  await openStep(page, "Yarn");
  await page.getByLabel("Weight before").pressSequentially("412", { delay: 40 });
  await page.getByLabel("Weight left").pressSequentially("37", { delay: 40 });
  await unfold(page, /^Yarn’s name: not answered/);
  await page.getByLabel("Name on the label").fill("Invented DK, moss");
  await page.getByLabel("Strands held together").fill("2");
  await expectNoSidewaysScroll(page);
  await openStep(page, "Fit");
  await page
    .locator("summary")
    .filter({ hasText: /^How you like it here: not answered/ })
    .first()
    .click();
  await page.getByRole("group", { name: "I would like this garment" }).first().getByText("closer").click();
  await expect(page.getByText("How you like it here: closer")).toBeVisible();
  await page.goto(`/testing/${tester.testerId}/report`);
  await page.getByRole("button", { name: /^Send/ }).click();
  await expect(page.getByText("Your report is sent, version 1. Thank you.")).toBeVisible();

  await signInByCookie(context, tester.designer);
  await page.goto(`/calls/${tester.callId}/progress/${tester.testerId}`);
  await expect(page.getByText(differs)).toBeVisible();
  await expect(page.getByText(/washed; steamed; before blocking 22 stitches.*, 31.5 rows/)).toBeVisible();
  await expect(page.getByText(/Invented DK, moss; 2 strands held together/)).toBeVisible();
  await expect(page.getByRole("region", { name: "How they like it" })).toContainText("closer");
});

test("that a number is missing moves nothing below it, and a question that was answered leaves no gap", async ({
  page,
  context,
}) => {
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  await letIn(context, tester);
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto(`/testing/${tester.testerId}/swatch`);
  const topOf = async (field: Locator) =>
    await field.evaluate((element) => Math.round(element.getBoundingClientRect().top + window.scrollY));
  const washed = page.getByRole("group", { name: "Washed and dried like the garment" });
  const rows = page.getByLabel("Rows or rounds");
  const [before, rowsBefore] = [await topOf(washed), await topOf(rows)];
  await page.getByLabel("Stitches", { exact: true }).pressSequentially("22", { delay: 40 });
  await expect(page.getByText("The number of rows is missing.")).toBeVisible();
  expect(await topOf(washed)).toBe(before);
  await page.getByLabel("Stitches", { exact: true }).fill("");
  await rows.pressSequentially("300", { delay: 40 });
  await expect(page.getByText("The number of stitches is missing.")).toBeVisible();
  expect([await topOf(washed), await topOf(rows)]).toEqual([before, rowsBefore]);
  await page.getByRole("radio", { name: "Yes" }).check();
  await page.getByLabel("Stitches", { exact: true }).pressSequentially("22", { delay: 40 });
  await page.getByText("Yes, that’s correct").click();
  const kept = page.getByText("You confirmed that this is correct.");
  await expect(kept).toBeVisible();
  expect(await topOf(washed)).toBe(before);
  // The answer and what stood there before stand below each other, and not on each other.
  const [answer, heading] = [await kept.boundingBox(), await page.getByText("How to count").boundingBox()];
  expect((answer?.y ?? 0) + (answer?.height ?? 0)).toBeLessThanOrEqual(heading?.y ?? 0);

  await openStep(page, "Yarn");
  const swatch = page.getByRole("group", { name: "Does this include your swatch?" });
  const yarnBefore = await topOf(swatch);
  await page.getByLabel("Weight before").pressSequentially("410", { delay: 40 });
  await expect(page.getByText("What is left is missing; write 0 where nothing is.")).toBeVisible();
  expect(await topOf(swatch)).toBe(yarnBefore);
});

test("a question under the swatch or the yarn moves nothing below it", async ({ page, context }) => {
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}/swatch`);
  const washed = page.getByRole("group", { name: "Washed and dried like the garment" });
  await page.getByRole("radio", { name: "Yes" }).check();
  await page.getByLabel("Stitches", { exact: true }).pressSequentially("22", { delay: 40 });
  const top = async () =>
    await washed.evaluate((field) => Math.round(field.getBoundingClientRect().top + window.scrollY));
  await page.getByLabel("Rows or rounds").pressSequentially("30", { delay: 40 });
  await expect(page.getByText(/^You have 22 stitches/)).toBeVisible();
  const before = await top();
  await page.getByLabel("Rows or rounds").pressSequentially("0", { delay: 40 });
  await expect(page.getByText("Yes, that’s correct")).toBeVisible();
  expect(await top()).toBe(before);

  await openStep(page, "Yarn");
  const swatch = page.getByRole("group", { name: "Does this include your swatch?" });
  await page.getByLabel("Weight before").pressSequentially("41", { delay: 40 });
  const left = await swatch.evaluate((field) => Math.round(field.getBoundingClientRect().top + window.scrollY));
  await page.getByLabel("Weight left").pressSequentially("37", { delay: 40 });
  await expect(page.getByText(/very little/)).toBeVisible();
  expect(await swatch.evaluate((field) => Math.round(field.getBoundingClientRect().top + window.scrollY))).toBe(left);
});
