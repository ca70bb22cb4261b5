import { expect, test } from "./fixtures";
import { importPattern, openEditor } from "./make-pattern";

test("a key in one cell draws no other cell anew", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await openEditor(page, await importPattern(page));
  const cell = page.getByRole("textbox", { name: "Shoulder stitches, M" });
  // A key that was heard and saved shows that the scripts have taken over every cell, and not only the first ones.
  await cell.press("End");
  await cell.press("Space");
  await expect(page.getByText(/Saved \d\d:\d\d/)).toBeVisible();
  // React keeps a component's drawn properties beside its element, a new object each time that it draws it.
  const drawn = await page.evaluateHandle(() => {
    const propertiesOf = (input: Element): unknown =>
      Object.entries(input).find(([key]) => key.startsWith("__reactProps"))?.[1];
    const inputs = [...document.querySelectorAll("[data-row] input")];
    const before = inputs.map(propertiesOf);
    return { count: () => inputs.filter((input, at) => propertiesOf(input) !== before[at]).length, all: inputs.length };
  });
  expect(await drawn.evaluate(({ all }) => all)).toBeGreaterThan(80);
  // A blank leaves the number what it is, and with it every step and sum.
  const saved = page.waitForResponse((answer) => answer.request().method() === "POST");
  await cell.press("Space");
  await saved;
  await expect(page.getByText(/Saved \d\d:\d\d/)).toBeVisible();
  expect(await drawn.evaluate(({ count }) => count())).toBe(1);
});

test("a page that was drawn before the last save was stored shows what was saved", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await openEditor(page, await importPattern(page));
  const cell = page.getByRole("textbox", { name: "Shoulder stitches, M" });
  const after = `${await cell.inputValue()}2`;
  // As it comes where a page is asked for again in the moment of a save.
  const drawnBefore = await page.request.get(page.url());
  await cell.press("End");
  await cell.press("2");
  await expect(page.getByText(/Saved \d\d:\d\d/)).toBeVisible();
  await page.route(page.url(), (route) => route.fulfill({ response: drawnBefore }), { times: 1 });
  await page.reload();
  await expect(cell).toHaveValue(after);
  await expect(page.getByRole("status").filter({ hasText: "1 change" })).toBeVisible();
});
