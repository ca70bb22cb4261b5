import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { takenOver } from "./taken-over";

test("a designer has a graded tank with its drawing from a template in seven actions", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  let actions = 0;
  const act = async (doing: Promise<unknown>) => {
    actions += 1;
    await doing;
  };
  await page.goto("/patterns");
  await act(page.getByRole("link", { name: "From a template" }).click());
  await page.waitForURL(/patterns\/new\/template/);
  await takenOver(page.getByLabel("Name of the pattern"));
  await act(page.getByRole("radio", { name: /^Tank/ }).check());
  await act(page.getByLabel("Name of the pattern").fill("Heron tank"));
  await act(page.getByLabel("Gauge: stitches").fill("22"));
  await act(page.getByLabel("and rows").fill("30"));
  await act(page.getByLabel(/^Ease at the bust/).fill("2"));
  await expectNoSidewaysScroll(page);
  await act(page.getByRole("button", { name: "Create graded pattern" }).click());
  await page.waitForURL(/\/patterns\/[0-9a-f-]{36}$/);
  expect(actions).toBe(7);
  await expect(page.getByRole("heading", { name: "Heron tank" })).toBeVisible();
  await expect(page.getByText(/Bust, around/).first()).toBeVisible();
  await expect(page.locator("svg[role=img]").first()).toBeVisible();
  await expectNoSidewaysScroll(page);
});

test("a template says which number cannot be right, and keeps what was typed", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  await page.goto("/patterns/new/template");
  await takenOver(page.getByLabel("Name of the pattern"));
  await page.getByLabel("Name of the pattern").fill("Heron pullover");
  await page.getByLabel("Gauge: stitches").fill("2");
  await page.getByLabel("and rows").fill("30");
  await page.getByLabel(/^Hem to underarm/).fill("400");
  await page.getByRole("button", { name: "Create graded pattern" }).click();
  await expect(page.getByText("Templates are for 7 to 50 stitches to 10 cm (4 in).")).toBeVisible();
  await expect(page.getByText("Enter 15.0 cm to 90.0 cm.")).toBeVisible();
  await expect(page.getByLabel("Name of the pattern")).toHaveValue("Heron pullover");
});
