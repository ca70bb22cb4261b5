import sharp from "sharp";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { publishListing } from "./make-open-call";
import { letIn, makeTester } from "./make-tester";
import { violations } from "./violations";

test("a tester’s photo that the designer shows stands on the open call’s page with its credit until it is withdrawn", async ({
  page,
  browser,
}) => {
  test.setTimeout(120_000);
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  await query("INSERT INTO tester_contact (tester_id, name, email, credit_name) VALUES ($1, $2, $3, $4)", [
    ...[tester.testerId, "Rosalind Invented", "r@example.org", "R. Knits"],
  ]);
  await publishListing(tester.callId);
  const phone = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, viewport: { width: 360, height: 740 } });
  await letIn(phone, tester);
  const own = await phone.newPage();
  await own.goto(`/testing/${tester.testerId}`);
  await own.getByRole("link", { name: /Photos/ }).click();
  const create = { width: 900, height: 1200, channels: 3, background: "#a33" } as const;
  const buffer = await sharp({ create }).jpeg().toBuffer();
  await own.getByLabel("Photos", { exact: true }).setInputFiles([{ name: "1.jpg", mimeType: "image/jpeg", buffer }]);
  await own.getByRole("button", { name: "Send photos" }).click();
  await expect(own.getByRole("img", { name: "Your photo: Front" })).toBeVisible();
  await expect(own.getByText("Credit: R. Knits")).toBeVisible();
  const allows = own.getByRole("checkbox", { name: "On the pattern’s page" });
  await allows.check();
  await own.getByRole("button", { name: "Save", exact: true }).click();
  await expect(own.getByText("Saved.")).toBeVisible();

  const visitor = await (await browser.newContext({ baseURL: process.env.NEXTAUTH_URL })).newPage();
  const openCall = `/open-calls/${tester.callId}`;
  const made = visitor.getByRole("region", { name: "Made by testers" });
  await visitor.goto(openCall);
  await expect(visitor.getByRole("heading", { name: "About this test" })).toBeVisible();
  await expect(made).toHaveCount(0);

  await signInByCookie(page.context(), tester.designer);
  await page.goto(`/calls/${tester.callId}`);
  await page.getByRole("link", { name: "Results", exact: true }).click();
  await page.getByRole("link", { name: "Photos", exact: true }).click();
  await expect(page.getByText("May be shown on the pattern’s page, credited as R. Knits")).toBeVisible();
  await page.getByRole("button", { name: /^Show on the page/ }).click();
  await expect(page.getByRole("button", { name: /^Take off the page/ })).toBeVisible();
  expect(await violations(page)).toEqual([]);

  await visitor.reload();
  await expect(made.getByRole("img", { name: "Saltmarsh Tee (invented), size M: front" })).toBeVisible();
  await expect(made.getByText("Size M, made by R. Knits")).toBeVisible();
  const address = (await made.getByRole("link").getAttribute("href")) ?? "";
  const served = () => visitor.evaluate(async (photo) => (await fetch(photo, { cache: "no-store" })).status, address);
  expect(await served()).toBe(200);
  await expectNoSidewaysScroll(visitor);

  await allows.uncheck();
  await own.getByRole("button", { name: "Withdraw consent" }).click();
  await expect(own.getByText("Saved.")).toBeVisible();
  await visitor.reload();
  await expect(visitor.getByRole("heading", { name: "About this test" })).toBeVisible();
  await expect(made).toHaveCount(0);
  expect(await served()).toBe(404);
  await page.reload();
  const takeDown = page.getByRole("region", { name: "Take down" }).getByRole("paragraph");
  await expect(takeDown).toContainText("no longer allows their photos on the pattern’s page");
  await expect(page.getByRole("button", { name: /the page/ })).toHaveCount(0);
  await Promise.all([phone.close(), visitor.context().close()]);
});
