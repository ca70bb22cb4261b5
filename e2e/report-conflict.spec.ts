import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester } from "./make-tester";
import { expectOpen, openMeasurement, openStep, storedFields, tapeLabel, unfold } from "./tester-steps";

test("without JavaScript what two devices typed is asked about at its field, with the way there", async ({
  browser,
}) => {
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  const opened = await Promise.all(
    [1, 2].map(async () => {
      const context = await browser.newContext({
        baseURL: process.env.NEXTAUTH_URL,
        javaScriptEnabled: false,
        viewport: { width: 360, height: 740 },
      });
      await letIn(context, tester);
      const page = await context.newPage();
      await page.goto(`/testing/${tester.testerId}`);
      await openStep(page, "Measurements");
      await openMeasurement(page, "Length");
      return { context, page };
    }),
  );
  const [phone, tablet] = opened.map(({ page }) => page);
  if (phone === undefined || tablet === undefined) throw new Error("no two devices");
  await tablet.getByLabel(tapeLabel("Length")).fill("56");
  await tablet.getByRole("button", { name: "Save", exact: true }).click();
  await expect(tablet.getByText("Saved.")).toBeVisible();

  await phone.getByLabel(tapeLabel("Length")).fill("57");
  await phone.getByRole("button", { name: "Save", exact: true }).click();
  await expectOpen(phone, "Length");
  const asks = "On another device you typed “56”, here “57”. Choose one.";
  await expect(phone.getByText(asks)).toHaveCount(1);
  const own = phone.getByRole("listitem").filter({ has: phone.getByLabel(tapeLabel("Length")) });
  await expect(own.getByRole("alert")).toContainText(asks);
  await expectNoSidewaysScroll(phone);
  await phone.getByRole("link", { name: "1 field needs your decision" }).click();
  await expect(own.getByRole("alert")).toBeInViewport();
  await own.getByRole("button", { name: "Use 57" }).click();
  await expect(phone.getByText("Saved.")).toBeVisible();
  expect(await storedFields(tester, /value$/)).toEqual({ "reading.length.1.value": "57" });
  await Promise.all(opened.map(({ context }) => context.close()));
});

test("a count with a digit too many is asked about in the place of its hint, and confirmed or fixed there", async ({
  page,
  context,
}) => {
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await openStep(page, "Your counts");
  const neck = page.getByLabel("Neck stitches", { exact: true });
  const below = page.getByLabel("Shoulder stitches", { exact: true });
  const top = async () =>
    await below.evaluate((field) => Math.round(field.getBoundingClientRect().top + window.scrollY));
  const before = await top();
  await neck.pressSequentially("620", { delay: 40 });
  await below.focus();
  const asks = "A digit too many? The pattern has 62.";
  await expect(page.getByText(asks)).toBeVisible();
  expect(await top()).toBe(before);
  await openStep(page, "Review and send");
  await page.getByRole("link", { name: "Neck stitches" }).click();
  await unfold(page, /A digit too many/);
  await expectNoSidewaysScroll(page);
  await page.getByRole("button", { name: "Use 62" }).click();
  await expect(neck).toHaveValue("62");
  await expect(page.getByText(asks)).toBeHidden();

  await neck.fill("26");
  await unfold(page, /Two digits swapped\?/);
  await page.getByText("Yes, that’s correct").click();
  await expect(page.getByText("You confirmed that this is correct.")).toBeVisible();
  expect(await storedFields(tester, /^worked/)).toEqual({ "worked.neck": "26", "worked.neck.kept": "yes" });
  // Another number is asked about again.
  await neck.fill("260");
  await expect(page.getByText("Far more than the pattern’s 62. Is that right?")).toBeVisible();
});
