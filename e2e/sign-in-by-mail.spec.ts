import { randomUUID } from "node:crypto";
import { makeDesigner, query } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { linkIn, startMailing, type MailingServer } from "./mailed-journey";
import { violations } from "./violations";

const PASSWORD = "a long enough password";

// One server for all of them.
test.describe.configure({ mode: "default" });

let mailing: MailingServer;
test.beforeAll(async () => {
  test.setTimeout(400_000);
  mailing = await startMailing();
});
test.afterAll(async () => await mailing.stop());

test("whoever signs up confirms their address first, and arrives where they were going", async ({ page }) => {
  const email = `${randomUUID()}@example.org`;
  await page.goto(mailing.at("/account"));
  await page.getByRole("link", { name: "Create an account" }).click();
  await expect(page.getByLabel("Password", { exact: true })).toHaveCount(0);
  await page.getByLabel("E-mail").fill(email);
  await page.getByRole("button", { name: "Send link" }).click();
  await expect(page.getByText("A link is on its way to this address.")).toBeVisible();
  expect(await query("SELECT id FROM account WHERE email = $1", [email])).toEqual([]);
  const address = linkIn(await mailing.mailTo(email, "Create your Sizewright account"), "Create your account");

  // Programs that scan mail open every link.
  for (let scan = 0; scan < 2; scan += 1) expect((await page.request.get(address)).status()).toBe(200);
  await page.goto(address);
  await page.getByLabel("Name").fill("Invented Designer");
  await page.getByLabel("Password", { exact: true }).fill("short");
  await page.getByRole("button", { name: "Create account" }).click();
  await expect(page.getByText("A password has at least 10 characters")).toBeVisible();
  await expectNoSidewaysScroll(page);
  expect(await violations(page)).toEqual([]);
  await page.getByLabel("Password", { exact: true }).fill(PASSWORD);
  await page.getByRole("button", { name: "Create account" }).click();
  await expect(page.getByRole("heading", { name: "Your account", exact: true })).toBeVisible();

  await page.goto(address);
  await expect(page.getByRole("heading", { name: "This link has been used" })).toBeVisible();
  await expect(page.getByLabel("E-mail")).toHaveValue(email);
});

test("signing up says the same for an address that has an account, and its owner is told", async ({ page }) => {
  const { email } = await makeDesigner({ password: PASSWORD });
  const answers: string[] = [];
  for (const typed of [email, `${randomUUID()}@example.org`]) {
    await page.goto(mailing.at("/sign-up"));
    await page.getByLabel("E-mail").fill(typed);
    await page.getByRole("button", { name: "Send link" }).click();
    await expect(page.getByText("Check your mail")).toBeVisible();
    answers.push(await page.getByRole("main").innerText());
  }
  expect(answers[0]).toBe(answers[1]);
  await mailing.mailTo(email, "You already have a Sizewright account");
});

test("a forgotten password is replaced by a mailed link without JavaScript, and the old one ends", async ({
  browser,
}) => {
  const { email } = await makeDesigner({ password: PASSWORD });
  await query("UPDATE account SET email_verified_at = now() WHERE email = $1", [email]);
  const context = await browser.newContext({ javaScriptEnabled: false, viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(mailing.at("/sign-in?next=%2Faccount"));
  await page.getByRole("link", { name: "Sign in by e-mail" }).click();
  await page.getByLabel("E-mail").fill(email.toUpperCase());
  await page.getByRole("button", { name: "Send link" }).click();
  await expect(page.getByText("If there is an account with this address")).toBeVisible();
  const address = linkIn(await mailing.mailTo(email, "Your link to sign in"), "Sign in");
  await page.request.get(address);
  await page.goto(address);
  await page.getByLabel("New password").fill("another long password");
  await page.getByRole("button", { name: "Set password and sign in" }).click();
  await expect(page.getByRole("heading", { name: "Your account", exact: true })).toBeVisible();
  await context.clearCookies();
  await page.goto(mailing.at("/sign-in?next=%2Faccount"));
  for (const typed of [PASSWORD, "another long password"]) {
    await page.getByLabel("E-mail").fill(email);
    await page.getByLabel("Password", { exact: true }).fill(typed);
    await page.getByRole("button", { name: "Sign in", exact: true }).click();
    if (typed === PASSWORD) await expect(page.getByText("don’t match")).toBeVisible();
  }
  await expect(page.getByRole("heading", { name: "Your account", exact: true })).toBeVisible();
  await context.close();
});

test("one press signs in, and a link that expired or was replaced says so", async ({ page }) => {
  const { email, name } = await makeDesigner();
  await query("UPDATE account SET email_verified_at = now() WHERE email = $1", [email]);
  const addresses: string[] = [];
  for (let asked = 0; asked < 2; asked += 1) {
    const before = mailing.mail.taken.length;
    await page.goto(mailing.at("/sign-in/by-mail"));
    await page.getByLabel("E-mail").fill(email);
    await page.getByRole("button", { name: "Send link" }).click();
    await expect.poll(() => mailing.mail.taken.length, { timeout: 60_000 }).toBe(before + 1);
    addresses.push(linkIn(await mailing.mailTo(email, "Your link to sign in"), "Sign in"));
  }
  await page.goto(addresses[0] ?? "");
  await expect(page.getByRole("heading", { name: "This link has been replaced" })).toBeVisible();
  await query("UPDATE email_link SET expires_at = now() WHERE address = $1", [email]);
  await page.goto(addresses[1] ?? "");
  await expect(page.getByRole("heading", { name: "This link has expired" })).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await query("UPDATE email_link SET expires_at = now() + interval '1 hour' WHERE address = $1", [email]);
  await page.goto(addresses[1] ?? "");
  await expect(page.getByText(name)).toBeVisible();
  await page.getByRole("main").getByRole("button", { name: "Sign in", exact: true }).click();
  await page.getByRole("link", { name: `Your account: ${name}` }).click();
  await expect(page.getByText(email).first()).toBeVisible();
});

test("too many links for one address are refused, whether or not it has an account", async ({ page }) => {
  const { email } = await makeDesigner();
  await query("DELETE FROM rate_limit WHERE key LIKE 'email-link-address%'");
  const answers: string[] = [];
  for (const typed of [email, `${randomUUID()}@example.org`]) {
    await page.goto(mailing.at("/sign-in/by-mail"));
    await page.getByLabel("E-mail").fill(typed);
    for (let asked = 0; asked < 6; asked += 1) {
      await page.getByRole("button", { name: "Send link" }).click();
      await expect(page.getByRole("button", { name: "Send link" })).toBeEnabled();
    }
    await expect(page.getByText("Too many attempts.")).toBeVisible();
    answers.push(await page.getByRole("main").innerText());
  }
  expect(answers[0]).toBe(answers[1]);
});
