import { expectNoSidewaysScroll } from "./import-call";
import { expect, test } from "./fixtures";
import { importPattern } from "./make-pattern";

test("an owner copies a pattern, archives the copy, finds it again, and deletes it by its name", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  await importPattern(page);
  const name = (await page.getByRole("heading", { level: 1 }).textContent()) ?? "";
  await page.getByRole("button", { name: "Duplicate this pattern" }).click();
  await expect(page.getByRole("heading", { level: 1, name: `${name} (copy)` })).toBeVisible();

  await page.getByText("Archive it …").click();
  await page.getByRole("button", { name: "Archive", exact: true }).click();
  await expect(page.getByText("This pattern is archived", { exact: true })).toBeVisible();
  await expect(page.getByRole("button", { name: "New test" })).toHaveCount(0);
  await expectNoSidewaysScroll(page);
  await page.getByRole("link", { name: "Your patterns" }).click();
  await expect(page.getByRole("heading", { level: 2, name })).toHaveCount(1);
  await page.getByRole("link", { name: "Archived patterns" }).click();
  await expect(page.getByText(/^0 tests · archived on /)).toBeVisible();
  await page.getByRole("link", { name: `${name} (copy)` }).click();
  await page.getByRole("button", { name: "Bring it back" }).click();
  await expect(page.getByText("This pattern is archived", { exact: true })).toHaveCount(0);

  await page.getByRole("link", { name: "Delete it …" }).click();
  await expect(page.getByText("This cannot be undone.")).toBeVisible();
  await page.getByLabel("Type the pattern’s name to confirm").fill(name);
  await page.getByRole("button", { name: "Delete this pattern" }).click();
  await expect(page.getByText(`This is not its name. Type “${name} (copy)”.`)).toBeVisible();
  await expectNoSidewaysScroll(page);
  await page.getByLabel("Type the pattern’s name to confirm").fill(`${name} (COPY) `);
  await page.getByRole("button", { name: "Delete this pattern" }).click();
  await page.waitForURL(/\/patterns$/);
  await expect(page.getByRole("heading", { level: 2 })).toHaveText([name]);
});
