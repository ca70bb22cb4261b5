import { expectNoSidewaysScroll } from "./import-call";
import { makeDesigner, query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { importPattern, openEditor } from "./make-pattern";
import { takenOver } from "./taken-over";

test("edits are kept as typed, told at their field, and become a revision with a reason", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  const patternId = await importPattern(page);
  await openEditor(page, patternId, "lengths");
  const sleeve = page.getByRole("textbox", { name: "Sleeve seam, all sizes" });
  await sleeve.fill("one");
  await expect(page.getByText(/“one” is not a number/)).toBeVisible();
  await sleeve.fill("1,5");
  await page.getByRole("link", { name: "Grading" }).click();
  await page.getByLabel("Neck stitches, M", { exact: true }).fill("64");
  await expect(page.getByText(/Saved \d\d:\d\d/)).toBeVisible();
  await expectNoSidewaysScroll(page);

  await openEditor(page, patternId, "lengths");
  await expect(sleeve).toHaveValue("1,5");
  await page.getByRole("link", { name: "Grading" }).click();
  await expect(page.getByLabel("Neck stitches, M", { exact: true })).toHaveValue("64");
  await page.getByRole("button", { name: "Save as revision" }).click();
  await page.getByRole("button", { name: "Save revision 2" }).click();
  await expect(page.getByText("Enter what you changed and why, in a few words.")).toBeVisible();
  await page.getByLabel("What you changed, and why").fill("A thicker seam, a wider neck in M");
  await page.getByRole("button", { name: "Save revision 2" }).click();
  await page.waitForURL(/revisions\/2$/);
  await expect(page.getByText("A thicker seam, a wider neck in M").first()).toBeVisible();
  await expect(page.getByRole("row", { name: /Sleeve seam.*takes 1 cm.*takes 1.5 cm/ })).toBeVisible();
  await expect(page.getByRole("row", { name: /Neck stitches.*62.*64/ })).toBeVisible();
});

test("what is typed while a save is on its way is sent once", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const patternId = await importPattern(page);
  await page.clock.install();
  await openEditor(page, patternId);
  let sent = 0;
  let goOn = () => {};
  const answered = new Promise<void>((resolve) => {
    goOn = resolve;
  });
  await page.route(/\/edit\?/, async (route) => {
    if (route.request().method() === "POST") sent += 1;
    await answered;
    await route.continue();
  });
  await page.getByLabel("Shoulder stitches, M", { exact: true }).fill("25");
  await page.clock.runFor(1000);
  await page.getByLabel("Neck stitches, M", { exact: true }).fill("64");
  goOn();
  await expect.poll(() => sent).toBe(2);
  await expect(page.getByText(/Saved \d\d:\d\d/)).toBeVisible();
  await page.clock.runFor(1000);
  await page.getByRole("button", { name: "Save as revision" }).click();
  await page.getByLabel("What you changed, and why").fill("A wider neck");
  await page.getByRole("button", { name: "Save revision 2" }).click();
  await page.waitForURL(/revisions\/2$/);
  // Two saves of the draft, and the revision: requests go one after another.
  expect(sent).toBe(3);
});

test("an edit is not called saved before it is", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const patternId = await importPattern(page);
  await page.clock.install();
  await openEditor(page, patternId);
  const saved = page.getByText(/Saved \d\d:\d\d/);
  await page.getByLabel("Shoulder stitches, M", { exact: true }).fill("25");
  await expect(saved).toBeVisible();
  await page.clock.pauseAt(await page.evaluate(() => Date.now() + 1_000));
  await page.getByLabel("Neck stitches, M", { exact: true }).fill("64");
  await expect(saved).toHaveCount(0);
  await page.clock.resume();
  await expect(saved).toBeVisible();
});

test("of two people editing one pattern the later is told, and both texts are kept", async ({
  page,
  designer,
  browser,
}) => {
  const patternId = await importPattern(page);
  expect(designer.accountId).not.toBe("");
  const helper = await makeDesigner();
  await query("INSERT INTO membership (pattern_id, account_id, role) VALUES ($1, $2, 'editor')", [
    patternId,
    helper.accountId,
  ]);
  const context = await browser.newContext();
  await signInByCookie(context, helper);
  const theirs = await context.newPage();
  await openEditor(page, patternId);
  await openEditor(theirs, patternId);
  await theirs.getByLabel("Neck stitches, M", { exact: true }).fill("64");
  await expect(theirs.getByText(/Saved \d\d:\d\d/)).toBeVisible();
  await page.getByLabel("Neck stitches, M", { exact: true }).fill("66");
  await page.getByLabel("Neck stitches, L", { exact: true }).fill("68");
  await expect(page.getByText(/saved while you were editing/)).toBeVisible();
  await expect(page.getByRole("row", { name: /Neck stitches, M.*66.*64/ })).toBeVisible();
  await page
    .getByRole("row", { name: /Neck stitches, M/ })
    .getByRole("radio")
    .nth(1)
    .check();
  await page.getByRole("button", { name: "Continue with these" }).click();
  await expect(page.getByLabel("Neck stitches, M", { exact: true })).toHaveValue("64");
  await expect(page.getByLabel("Neck stitches, L", { exact: true })).toHaveValue("68");
  await context.close();
});

test("a faulty document is refused with its paths, what was pasted stays, and nothing is stored", async ({
  page,
  designer,
}) => {
  expect(designer.accountId).not.toBe("");
  await page.goto("/patterns/new/document");
  await takenOver(page.getByLabel("Or paste its text"));
  const text = JSON.stringify({ format: "sizewright/pattern@1", name: "Half a pattern" });
  await page.getByLabel("Or paste its text").fill(text);
  await page.getByRole("button", { name: "Import file" }).click();
  await expect(page.getByText("The file was not imported, and nothing was stored")).toBeVisible();
  await expect(page.getByText("is missing; it should be a list.").first()).toBeVisible();
  await expect(page.getByLabel("Or paste its text")).toHaveValue(text);
  await page.goto("/patterns");
  await expect(page.getByText("Half a pattern")).toHaveCount(0);
});
