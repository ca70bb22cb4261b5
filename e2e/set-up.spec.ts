import { expect, test } from "./fixtures";
import { importPattern } from "./make-pattern";

/** So many days from now, as a date field takes it. */
function inDays(days: number): string {
  return new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
}

test("a listing is created, saved as a draft, published, read by everybody, and unpublished", async ({
  page,
  designer,
  browser,
}) => {
  await page.goto(`/patterns/${await importPattern(page)}`);
  await page.getByRole("button", { name: "New test" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Set up" })).toBeVisible();
  // The browser's zone, which the test sets.
  await expect(page.getByLabel("Time zone")).toHaveValue("Pacific/Chatham");
  await page.getByLabel("Title").fill("Chatham test");
  const wanted = page.getByLabel(/^Spots in/).first();
  await wanted.fill("three");
  await page.getByRole("button", { name: "Save draft" }).click();
  await expect(page.getByText("“three” is not a whole number. Enter a number such as 3.").first()).toBeVisible();
  await page.reload();
  await expect(wanted).toHaveValue("three");
  await wanted.fill("30");
  const most = page.getByLabel(/^At most in/).first();
  await expect(most).toHaveValue("3");
  // One box for all sizes; each has its own where it is unticked.
  await expect(page.getByLabel(/^Spots in/).filter({ visible: true })).toHaveCount(1);
  await page.getByLabel("The same for all sizes").uncheck();
  await expect(wanted).toBeHidden();
  await page.getByLabel("The same for all sizes").check();
  await page.getByRole("button", { name: "Publish" }).click();
  const refused = page.getByRole("alert").filter({ hasText: "Not published yet" });
  await expect(refused).toContainText("Last day to apply: Choose the last day to apply.");
  const tooFew = page.getByText("XS has 30 spots, so “at most” must be 30 or more.").filter({ visible: true });
  // At the top, at the box and above the buttons, once each for all sizes.
  await expect(tooFew).toHaveCount(3);
  await expect(page.getByText("XL has 30 spots").filter({ visible: true })).toHaveCount(0);
  await most.fill("30");
  await page.getByLabel("Last day to apply").fill(inDays(9));
  await page.getByLabel("Testers start on").fill(inDays(12));
  await page.getByLabel("Swatches by").focus();
  // A week to swatch, seven to knit.
  await expect(page.getByLabel("Swatches by")).toHaveValue(inDays(19));
  await expect(page.getByLabel("Reports by")).toHaveValue(inDays(61));
  await page.getByLabel("Swatches by").fill(inDays(20));
  await page.getByLabel("Reports by").fill(inDays(60));
  await page.getByLabel("What testers get").fill("The pattern.");
  await page.getByLabel("Who is responsible").fill("Invented Designs");
  await page.getByLabel("How to reach them").fill("privacy@example.org");
  await page.getByRole("button", { name: "Publish" }).click();
  await expect(page.getByText("Everybody can read it on the")).toBeVisible();
  const address = (await page.getByRole("link", { name: "tester call", exact: true }).getAttribute("href")) ?? "";

  const visitor = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled: false });
  const reader = await visitor.newPage();
  await reader.goto(address);
  await expect(reader.getByRole("heading", { level: 1, name: "Chatham test" })).toBeVisible();
  await expect(reader.getByRole("main")).toContainText(`${designer.name} is looking for testers for`);
  await expect(reader.getByRole("main")).toContainText("Time zone: Chatham time (Pacific/Chatham)");
  await expect(reader.getByRole("link", { name: "Apply to test" }).first()).toHaveAttribute("href", `${address}/apply`);
  const picture = await reader.locator('meta[property="og:image"]').getAttribute("content");
  expect(picture).toContain(`${process.env.NEXTAUTH_URL}${address}/opengraph-image`);
  const drawn = await reader.request.get(picture ?? "");
  expect([drawn.status(), drawn.headers()["content-type"]]).toEqual([200, "image/jpeg"]);

  await page.getByRole("button", { name: "Unpublish" }).click();
  await expect(page.getByText("Nobody else can see its page")).toBeVisible();
  expect((await reader.goto(address))?.status()).toBe(404);
  expect((await reader.request.get(picture ?? "")).status()).toBe(404);
  await visitor.close();
});
