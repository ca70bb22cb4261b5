import { randomUUID } from "node:crypto";
import { makeDesigner, query } from "./designer";
import { expect, test } from "./fixtures";

const PASSWORD = "a long enough password";

test("whoever makes an account is signed in and arrives where they were going, and signs in by the form again", async ({
  page,
}) => {
  const email = `${randomUUID()}@example.org`;
  await page.goto("/account");
  await expect(page).toHaveTitle("Sign in · Sizewright");
  await page.getByRole("link", { name: "Create an account" }).click();
  await page.getByLabel("Name").fill("Invented Designer");
  await page.getByLabel("E-mail").fill(email.toUpperCase());
  await page.getByLabel("Password", { exact: true }).fill("short");
  await page.getByRole("button", { name: "Create account" }).click();
  await expect(page.getByText("A password has at least 10 characters")).toBeVisible();
  await expect(page.getByLabel("Name")).toHaveValue("Invented Designer");
  await page.getByLabel("Password", { exact: true }).fill(PASSWORD);
  await page.getByRole("button", { name: "Create account" }).click();
  await expect(page.getByRole("heading", { name: "Your account" })).toBeVisible();
  await page.getByRole("main").getByRole("button", { name: "Sign out", exact: true }).click();
  await page.waitForURL("**/sign-in");
  await page.goto("/sign-in?next=%2Faccount");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password", { exact: true }).fill(PASSWORD);
  await page.getByRole("button", { name: "Sign in", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Your account" })).toBeVisible();
});

test("an e-mail that has an account opens it with its own password alone", async ({ page }) => {
  const { email } = await makeDesigner({ password: PASSWORD });
  await page.goto("/sign-up?next=%2Faccount");
  await page.getByLabel("Name").fill("Somebody Else");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password", { exact: true }).fill("another long password");
  await page.getByRole("button", { name: "Create account" }).click();
  await expect(page.getByText("If there is already an account")).toBeVisible();
  await expect(page.getByLabel("E-mail")).toHaveValue(email);
  await page.goto("/account");
  await expect(page.getByRole("heading", { name: "Sign in" })).toBeVisible();
  expect(await query("SELECT name FROM account WHERE email = $1", [email])).not.toEqual([{ name: "Somebody Else" }]);
});

test("a wrong password keeps what was typed, and says no more than for nobody's e-mail", async ({ page }) => {
  const { email } = await makeDesigner({ password: PASSWORD });
  const answers: string[] = [];
  for (const typed of [email, `${randomUUID()}@example.org`]) {
    await page.goto("/sign-in");
    await page.getByLabel("E-mail").fill(typed);
    await page.getByLabel("Password", { exact: true }).fill("a wrong password");
    await page.getByRole("button", { name: "Sign in", exact: true }).click();
    await expect(page.getByText("don’t match")).toBeVisible();
    await expect(page.getByLabel("E-mail")).toHaveValue(typed);
    answers.push((await page.getByRole("main").innerText()).replace(typed, ""));
  }
  expect(answers[0]).toBe(answers[1]);
});

test("the form works without JavaScript, and keeps the e-mail", async ({ browser, baseURL }) => {
  const { email } = await makeDesigner({ password: PASSWORD });
  const context = await browser.newContext({ javaScriptEnabled: false, baseURL });
  const page = await context.newPage();
  await page.goto("/sign-in");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password", { exact: true }).fill("a wrong password");
  await page.getByRole("button", { name: "Sign in", exact: true }).click();
  await expect(page.getByText("don’t match")).toBeVisible();
  await expect(page.getByLabel("E-mail")).toHaveValue(email);
  await page.goto("/sign-in?next=%2Faccount");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password", { exact: true }).fill(PASSWORD);
  await page.getByRole("button", { name: "Sign in", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Your account" })).toBeVisible();
  await context.close();
});

test("the way on from signing in never leads to another site", async ({ page }) => {
  const { email } = await makeDesigner({ password: PASSWORD });
  await page.goto(`/sign-in?next=${encodeURIComponent("//elsewhere.example/account")}`);
  await expect(page.locator("input[name=next]")).toHaveValue("/");
  await page.getByLabel("E-mail").fill(email);
});

test("a person changes their unit and password, and other sessions end", async ({ page, browser, baseURL }) => {
  const { accountId, email } = await makeDesigner({ password: PASSWORD });
  const elsewhere = await browser.newContext({ baseURL });
  for (const each of [page, await elsewhere.newPage()]) {
    await each.goto("/sign-in?next=%2Faccount");
    await each.getByLabel("E-mail").fill(email);
    await each.getByLabel("Password", { exact: true }).fill(PASSWORD);
    await each.getByRole("button", { name: "Sign in", exact: true }).click();
    await expect(each.getByRole("heading", { name: "Your account" })).toBeVisible();
  }
  await page.getByLabel("Units").selectOption("inches");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  expect(await query("SELECT unit FROM account WHERE id = $1", [accountId])).toEqual([{ unit: "in" }]);
  await page.getByLabel("Current password").fill(PASSWORD);
  await page.getByLabel("New password").fill("another long password");
  await page.getByRole("button", { name: "Change password" }).click();
  await expect(page.getByText("Your password is changed")).toBeVisible();
  await page.reload();
  await expect(page.getByRole("heading", { name: "Your account" })).toBeVisible();
  const other = elsewhere.pages()[0] ?? (await elsewhere.newPage());
  await other.reload();
  await expect(other.getByRole("heading", { name: "Sign in" })).toBeVisible();
  await elsewhere.close();
});

test("signing out everywhere ends the session that its cookie still holds", async ({ page, context, designer }) => {
  await page.goto("/account");
  await expect(page.getByText(designer.email).first()).toBeVisible();
  const cookies = await context.cookies();
  await page.getByRole("button", { name: "Sign out everywhere" }).click();
  await expect(page.getByRole("heading", { name: "Sign in" })).toBeVisible();
  await context.addCookies(cookies);
  await page.goto("/account");
  await expect(page.getByRole("heading", { name: "Sign in" })).toBeVisible();
});
