import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester } from "./make-tester";
import { enterSwatch } from "./tester-steps";

test("a tester says how to be named, and the designer notes what they got and copies the names", async ({
  page,
  context,
}) => {
  test.setTimeout(120_000);
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  await query("INSERT INTO tester_contact (tester_id, name) VALUES ($1, 'Rosalind Invented')", [tester.testerId]);
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await enterSwatch(page);
  await expect(page.getByText("Saved.")).toBeVisible();
  await page.getByRole("link", { name: /Your test of/ }).click();
  await page.getByRole("link", { name: /Review and send/ }).click();
  await page.getByRole("button", { name: /^Send/ }).click();
  const credit = page.getByRole("region", { name: "Your name in the pattern" });
  await expect(credit.getByText("You are named only if you say so.")).toBeVisible();
  await expect(credit.getByLabel("Name to use")).toHaveValue("Rosalind Invented");
  await credit.getByLabel("Name to use").fill("   ");
  await credit.getByRole("button", { name: "Use this name" }).click();
  await expect(credit.getByRole("alert")).toContainText("Enter the name to use, or choose not to be named.");
  await credit.getByLabel("Name to use").fill("R. of the invented moss");
  await credit.getByRole("button", { name: "Use this name" }).click();
  await expect(credit.getByText("You will be named as R. of the invented moss.")).toBeVisible();
  await expectNoSidewaysScroll(page);

  await signInByCookie(context, tester.designer);
  await page.goto(`/calls/${tester.callId}`);
  await page.getByRole("link", { name: "Testers", exact: true }).click();
  await page.getByRole("link", { name: "Thanks" }).click();
  await expect(page.getByText("0 of 1 have the finished pattern")).toBeVisible();
  await page.getByRole("button", { name: "Finished pattern sent" }).click();
  await expect(page.getByText("Choose the testers first")).toBeVisible();
  await page.getByRole("checkbox", { name: "Select Rosalind Invented" }).check();
  await page.getByRole("button", { name: "Finished pattern sent" }).click();
  await expect(page.getByText("1 of 1 have the finished pattern")).toBeVisible();
  await expect(page.getByLabel("Names", { exact: true })).toHaveValue("Tested by R. of the invented moss.");
  await page.getByRole("checkbox", { name: "Select Rosalind Invented" }).check();
  await page.getByText("Note a payment, or correct a mark …").click();
  await page.getByLabel("Payment, for the selected testers").fill("yarn paid, 40 €");
  await page.getByRole("button", { name: "Save note" }).click();
  await expect(page.getByRole("list", { name: "Testers who sent a report" })).toContainText("yarn paid, 40 €");
  await expectNoSidewaysScroll(page);
});
