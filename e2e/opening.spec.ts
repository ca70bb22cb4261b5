import { expect, test } from "./fixtures";
import { bringPattern } from "./pattern-of";

/** So many days from now, as a date field takes it. */
function inDays(days: number): string {
  return new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
}

test("a call is opened, kept as a draft, published, read by everybody, and taken back", async ({
  page,
  designer,
  browser,
}) => {
  await page.goto(`/patterns/${await bringPattern(page)}`);
  await page.getByRole("button", { name: "Open a call" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Opening" })).toBeVisible();
  // Her browser's zone, by which the test runs.
  await expect(page.getByLabel("Time zone of these days")).toHaveValue("Pacific/Chatham");
  await page.getByLabel("Title").fill("Chatham test");
  const wanted = page.getByLabel(/^Wanted in/).first();
  await wanted.fill("three");
  await page.getByRole("button", { name: "Keep as a draft" }).click();
  await expect(page.getByText("“three” is not a whole number such as 3.").first()).toBeVisible();
  await page.reload();
  await expect(wanted).toHaveValue("three");
  await wanted.fill("30");
  await page.getByRole("button", { name: "Publish" }).click();
  const refused = page.getByRole("alert").filter({ hasText: "Not published yet" });
  await expect(refused).toContainText("Last day to apply: Give the last day to apply.");
  await page.getByLabel("Last day to apply").fill(inDays(9));
  await page.getByLabel("Testers start on").fill(inDays(12));
  await page.getByLabel("Swatches by").fill(inDays(20));
  await page.getByLabel("Reports by").fill(inDays(60));
  await page.getByLabel("What testers get").fill("The pattern.");
  await page.getByRole("button", { name: "Publish" }).click();
  await expect(page.getByText("Everybody can read it at")).toBeVisible();
  const address = (await page.getByRole("link", { name: "its page", exact: true }).getAttribute("href")) ?? "";

  const visitor = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled: false });
  const reader = await visitor.newPage();
  await reader.goto(address);
  await expect(reader.getByRole("heading", { level: 1, name: "Chatham test" })).toBeVisible();
  await expect(reader.getByRole("main")).toContainText(`${designer.name} looks for testers of`);
  await expect(reader.getByRole("main")).toContainText("In Chatham time (Pacific/Chatham).");
  await expect(reader.getByRole("link", { name: "Apply to test it" }).first()).toHaveAttribute(
    "href",
    `${address}/apply`,
  );
  const picture = await reader.locator('meta[property="og:image"]').getAttribute("content");
  expect(picture).toContain(`${process.env.NEXTAUTH_URL}${address}/opengraph-image`);
  const drawn = await reader.request.get(picture ?? "");
  expect([drawn.status(), drawn.headers()["content-type"]]).toEqual([200, "image/png"]);

  await page.getByRole("button", { name: "Take back" }).click();
  await expect(page.getByText("Its page is gone for everybody else")).toBeVisible();
  expect((await reader.goto(address))?.status()).toBe(404);
  expect((await reader.request.get(picture ?? "")).status()).toBe(404);
  await visitor.close();
});
