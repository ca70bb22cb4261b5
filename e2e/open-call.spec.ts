import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll, importCall } from "./import-call";
import { makeOpenCall, publishListing } from "./make-open-call";
import { violations } from "./violations";

const SCREEN = 740;

test("a reader chooses one of nine sizes and reads its body, its garment and its yarn, also without scripts", async ({
  page,
  browser,
  designer,
}) => {
  const callId = await importCall(page);
  await publishListing(callId, {
    introduction: "A tee for everybody. ".repeat(60),
    gives: "The pattern, and 5 balls of yarn.",
    bodyAsked: ["bust", "upper-arm"],
  });
  for (const javaScriptEnabled of [true, false]) {
    const visitor = await browser.newContext({
      ...{ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled },
      viewport: { width: 360, height: SCREEN },
    });
    const reader = await visitor.newPage();
    await reader.goto(`/open-calls/${callId}`);
    await expect(reader.getByText("The pattern, and 5 balls of yarn.")).toBeVisible();
    await expect(reader.getByText("the end of Tuesday 14 March 2090")).toBeVisible();
    await expect(reader.getByRole("main").getByRole("figure")).toBeVisible();
    const sizes = reader.getByRole("navigation", { name: "Size" }).getByRole("link");
    await expect(sizes).toHaveCount(9);
    expect((await sizes.first().boundingBox())?.y ?? Infinity).toBeLessThan(3 * SCREEN);
    const chosen = reader.getByRole("region", { name: "Sizes" });
    const metres: number[] = [];
    for (const label of ["XS", "3X"]) {
      await sizes.getByText(label, { exact: true }).click();
      await expect(chosen.getByRole("heading", { name: `Size ${label}`, exact: true })).toBeVisible();
      await expect(chosen.getByText("Bust (decides the size)").first()).toBeInViewport();
      const yarn = (await chosen.getByRole("listitem").filter({ hasText: / m, / }).textContent()) ?? "";
      metres.push(Number(/([\d,]+) m,/.exec(yarn)?.[1]?.replace(",", "")));
    }
    expect(metres[0]).toBeGreaterThan(300);
    expect(metres[1]).toBeGreaterThan(metres[0] ?? Infinity);
    // The unit keeps the size.
    await reader.getByRole("navigation", { name: "Unit" }).getByRole("link", { name: "in", exact: true }).click();
    await expect(chosen.getByText(/\d yd, /)).toBeVisible();
    await expect(chosen.getByRole("heading", { name: "Size 3X", exact: true })).toBeVisible();
    await chosen.getByText("All sizes side by side").click();
    await expect(chosen.getByRole("region", { name: "Finished measurements" })).toBeVisible();
    await expectNoSidewaysScroll(reader);
    if (javaScriptEnabled) expect(await violations(reader)).toEqual([]);
    await visitor.close();
  }
  expect(designer.name).not.toBe("");
});

test("a body measurement is asked about when its field is left, without moving what is below", async ({
  page,
  designer,
}) => {
  const callId = await makeOpenCall(designer);
  await page.context().clearCookies();
  await page.goto(`/open-calls/${callId}`);
  await page.getByRole("link", { name: "Apply to test" }).first().click();
  await page.getByLabel("Name").pressSequentially("Noor", { delay: 30 });
  const bust = page.getByRole("textbox", { name: "Bust" });
  const [asked, size] = [page.getByText(/You entered/), page.getByRole("group", { name: "Sizes you would make" })];
  await bust.pressSequentially("38", { delay: 30 });
  await expect(asked).toBeHidden();
  const before = await size.boundingBox();
  await bust.press("Tab");
  await expect(asked).toHaveText(/You entered 38 cm. Did you mean inches\? Then enter “38 in”\./);
  expect(await size.boundingBox()).toEqual(before);
  // The unit is what was wrong.
  await page.getByRole("radio", { name: "inches" }).check();
  await expect(asked).toBeHidden();
  await bust.fill("about 97");
  await bust.press("Tab");
  await expect(bust).toHaveAttribute("aria-invalid", "true");
  await bust.fill("20 in");
  await bust.press("Tab");
  await expect(asked).toContainText("This pattern’s sizes are made for bust");
  // Who has read the question and leaves the number is not asked again.
  await expect(page.locator('input[name="asked"][value="bust"]')).toBeAttached();
  await page.getByRole("button", { name: "Send application" }).click();
  const summary = page.getByRole("main").getByRole("alert");
  await expect(summary).toContainText("E-mail");
  await expect(summary).not.toContainText("Bust");
});
