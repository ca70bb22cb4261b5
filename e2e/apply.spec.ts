import { randomUUID } from "node:crypto";
import type { Page } from "@playwright/test";
import { expectNoSidewaysScroll } from "./import-call";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { agreement, makeOpenCall } from "./make-open-call";

// The page for what is not there is one that the browser tells of.
test.use({ expectedErrors: /status of 404/ });

async function fillIn(page: Page, { name, email, bust }: { name: string; email: string; bust: string }): Promise<void> {
  await page.getByLabel("Name").fill(name);
  await page.getByLabel("E-mail").fill(email);
  await page.getByRole("textbox", { name: "Bust" }).fill(bust);
  await page.getByRole("checkbox", { name: /^L for bust/ }).check();
  await page.getByLabel("First choice").selectOption({ label: "L" });
  await page.getByRole("radio", { name: "I have tested a few patterns" }).check();
}

const AGREES = /^I have read the agreement/;
const ADULT = "I am 18 or over.";
const SEND = "Send application";

test("an applicant is asked, keeps what was typed, applies once, withdraws and deletes", async ({ page, designer }) => {
  const callId = await makeOpenCall(designer);
  await page.context().clearCookies();
  await page.goto(`/open-calls/${callId}/apply`);
  const maja = { name: "نور 🧶", email: `${randomUUID()}@example.org`, bust: "40" };
  await fillIn(page, maja);
  await page.getByRole("button", { name: SEND }).click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("The agreement");
  await expect(page.getByText("Did you mean inches? Then enter “40 in”.")).toBeVisible();
  await page.reload();
  await expect(page.getByLabel("Name")).toHaveValue(maja.name);
  await expect(page.getByRole("checkbox", { name: /^L for bust/ })).toBeChecked();
  await page.getByRole("textbox", { name: "Bust" }).fill("38 1/2 in");
  await agreement(callId, 2, "You test, you tell, you keep it to yourself.");
  await page.getByRole("checkbox", { name: AGREES }).check();
  await page.getByRole("checkbox", { name: ADULT }).check();
  await page.getByRole("button", { name: SEND }).click();
  await expect(page.getByText("The agreement has changed while you were reading")).toBeVisible();
  await expect(page.getByText("you keep it to yourself")).toBeVisible();
  await expect(page.getByRole("textbox", { name: "Bust" })).toHaveValue("38 1/2 in");
  await expect(page.getByRole("checkbox", { name: AGREES })).not.toBeChecked();
  await page.getByRole("checkbox", { name: AGREES }).check();
  await page.getByRole("button", { name: SEND }).click();

  await expect(page.getByText("Thank you: your application is sent")).toBeVisible();
  await expect(page.locator('meta[name="robots"]')).toHaveAttribute("content", /noindex/);
  await expect(page.getByText("“38 1/2 in”, read as 97.8 cm (38 1/2 in)")).toBeVisible();
  await expect(page.getByText("Time zone: Pacific/Chatham.")).toBeVisible();
  const link = await page.getByLabel("Address of your application").inputValue();
  await expectNoSidewaysScroll(page);

  await page.goto(`/open-calls/${callId}/apply`);
  await expect(page.getByLabel("Name")).toHaveValue("");
  await fillIn(page, { ...maja, name: "Somebody else", bust: "110" });
  await page.getByRole("checkbox", { name: AGREES }).check();
  await page.getByRole("checkbox", { name: ADULT }).check();
  await page.getByRole("button", { name: SEND }).click();
  await expect(page.getByText("You have already applied for this test")).toBeVisible();
  await expect(page.getByRole("main")).not.toContainText(maja.name);

  await page.goto(link);
  await page.getByRole("button", { name: "Withdraw application" }).click();
  await expect(page.getByText("You have withdrawn your application")).toBeVisible();
  await page.getByRole("button", { name: "Resubmit application" }).click();
  await expect(page.getByText("Thank you: your application is sent")).toBeVisible();

  await signInByCookie(page.context(), designer);
  await page.goto(`/calls/${callId}/applications`);
  await page
    .getByRole("group", { name: /Your decision on/ })
    .getByRole("button", { name: "Yes" })
    .click();
  await expect(page.getByText("1 applied: 1 yes.")).toBeVisible();
  await page.getByRole("link", { name: maja.name }).click();
  await expect(page.getByRole("row", { name: /L bust 12.2 cm smaller ✓ yes ✓ yes/ })).toBeVisible();
  await page.getByText("They lost their link …").click();
  await expect(page.getByLabel("Address of their application")).toHaveValue(link);
  await expectNoSidewaysScroll(page);

  await page.goto(link);
  await page.getByRole("link", { name: "Delete application" }).click();
  await page.getByRole("button", { name: "Delete for good" }).click();
  await expect(page.getByRole("heading", { name: "Your application is deleted" })).toBeVisible();
  expect((await page.goto(link))?.status()).toBe(404);
});

test("without JavaScript everything typed comes back, and it is sent and deleted all the same", async ({
  browser,
  designer,
}) => {
  const callId = await makeOpenCall(designer);
  const context = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled: false });
  const page = await context.newPage();
  const maja = { name: "x".repeat(300), email: `${randomUUID()}@example.org`, bust: "1200" };
  await page.goto(`/open-calls/${callId}/apply`);
  await fillIn(page, maja);
  await query("UPDATE listing SET published_at = NULL WHERE call_id = $1", [callId]);
  await page.getByRole("button", { name: SEND }).click();
  await expect(page.getByText("This tester call is no longer public")).toBeVisible();
  await expect(page.getByText(maja.name)).toBeVisible();
  await query("UPDATE listing SET published_at = now() WHERE call_id = $1", [callId]);
  await page.goto(`/open-calls/${callId}/apply`);
  await fillIn(page, maja);
  await page.getByRole("radio", { name: "inches" }).check();
  await page.getByRole("checkbox", { name: AGREES }).check();
  await page.getByRole("button", { name: SEND }).click();
  await expect(page.getByText("Enter a length of at most 393 in, such as 38 1/4 in.")).toBeVisible();
  await expect(page.getByRole("radio", { name: "inches" })).toBeChecked();
  await expect(page.getByLabel("First choice")).toHaveValue("large");
  await expect(page.getByRole("checkbox", { name: AGREES })).toBeChecked();
  await page.getByRole("textbox", { name: "Bust" }).fill("100");
  await page.getByRole("checkbox", { name: ADULT }).check();
  await page.getByRole("button", { name: SEND }).click();
  await expect(page.getByText("Did you mean centimetres? Then enter “100 cm”.")).toBeVisible();
  await page.getByRole("button", { name: SEND }).click();
  await expect(page.getByText("“100”, read as 254.0 cm (100 in)")).toBeVisible();
  await page.getByRole("link", { name: "Delete application" }).click();
  await page.getByRole("button", { name: "Delete for good" }).click();
  await expect(page.getByRole("heading", { name: "Your application is deleted" })).toBeVisible();
  await context.close();
});
