import { query } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { makeThirty } from "./make-thirty";
import { violations } from "./violations";

test("a designer writes to several silent testers, opens their spots, and gives one back", async ({
  page,
  designer,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  const { callId } = await makeThirty(designer);
  await page.goto(`/calls/${callId}`);
  await page.getByRole("listitem").filter({ hasText: "no news for 10 days" }).getByRole("link").click();
  await expect(page.getByRole("link", { name: "No news 2" })).toHaveAttribute("aria-current", "true");
  await page.getByLabel("Select all shown").check();
  await page.getByRole("button", { name: "Write to selected" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Write to testers" })).toBeVisible();
  await expect(page.getByRole("textbox", { name: "Addresses" })).toHaveValue(
    "tester-27@example.org, tester-28@example.org",
  );
  await expect(page.getByRole("textbox", { name: "Message" })).toHaveValue(/How is “Winter test” going/);
  await expectNoSidewaysScroll(page);
  expect(await violations(page)).toEqual([]);

  await page.getByRole("link", { name: "all testers" }).click();
  await page.getByRole("link", { name: "No news 2" }).click();
  await expect(page.getByRole("link", { name: "No news 2" })).toHaveAttribute("aria-current", "true");
  await page.getByText("Open their spots for others").click();
  await page.getByRole("button", { name: "Open the spots of those selected" }).click();
  await expect(page.getByText("Choose the testers first")).toBeVisible();
  await page.getByLabel("Select all shown").check();
  await page.getByRole("button", { name: "Open the spots of those selected" }).click();
  await expect(page.getByRole("link", { name: "2 testers have not been in touch" })).toBeVisible();
  await page.getByRole("link", { name: "Spot opened 2" }).click();
  await page.getByRole("link", { name: "Bettina Berg" }).click();
  await expect(page.getByText("You opened their spot, and nobody has taken it yet.")).toBeVisible();
  await page.getByRole("button", { name: "Give the spot back" }).click();
  await expect(page.getByText("Open their spot for somebody else")).toBeVisible();
  const freed = await query("SELECT code FROM tester WHERE call_id = $1 AND freed_at IS NOT NULL", [callId]);
  expect(freed).toEqual([{ code: "tester-28" }]);
});

test("several applications are declined at once, without scripts", async ({ browser, designer, context }) => {
  const { callId } = await makeThirty(designer);
  const plain = await browser.newContext({
    baseURL: process.env.NEXTAUTH_URL,
    javaScriptEnabled: false,
    storageState: await context.storageState(),
    viewport: { width: 360, height: 740 },
  });
  const page = await plain.newPage();
  await page.goto(`/calls/${callId}`);
  await page.getByRole("link", { name: "Decide on applications" }).click();
  await page.getByLabel("Select Applicant 1").check();
  await page.getByLabel("Select Applicant 2").check();
  await page.getByRole("button", { name: "Decline selected" }).click();
  await expect(page.getByRole("button", { name: "No", exact: true, pressed: true })).toHaveCount(2);
  await expectNoSidewaysScroll(page);
  await plain.close();
});

test("selected applicants who have a size are invited at once, and whoever is not is named", async ({
  page,
  designer,
}) => {
  const { callId } = await makeThirty(designer);
  const assigned =
    "UPDATE application SET decision = 'yes', size = 'size-4x', pin = 'size' WHERE call_id = $1 AND position = 0";
  await query(assigned, [callId]);
  await page.goto(`/calls/${callId}/applications`);
  await page.getByText("Invite selected …").click();
  await page.getByRole("button", { name: "Send invitations" }).click();
  await expect(page.getByText("Choose applications first, by the box before the name.")).toBeVisible();
  await page.getByLabel("Select all shown").check();
  await page.getByRole("button", { name: "Send invitations" }).click();
  await expect(page.getByText("1 person is invited")).toBeVisible();
  await expect(page.getByRole("alert").filter({ hasText: "1 person is not invited" })).toContainText(
    "Applicant 2: They have no size yet.",
  );
  await page.getByRole("link", { name: "Copy and send each message" }).click();
  await expect(page.getByText("Now copy and send each message.")).toBeVisible();
  await page.getByText("Message to copy for Applicant 1").click();
  await expect(page.getByLabel("Message for Applicant 1")).toHaveValue(/Applicant 1[^]*\/invited\//);
});

test("moving somebody far from their size warns, and goes on where the designer wants it", async ({
  browser,
  designer,
  context,
}) => {
  const { callId } = await makeThirty(designer);
  await query("UPDATE application SET decision = 'yes' WHERE call_id = $1", [callId]);
  const plain = await browser.newContext({
    baseURL: process.env.NEXTAUTH_URL,
    javaScriptEnabled: false,
    storageState: await context.storageState(),
    viewport: { width: 360, height: 740 },
  });
  const page = await plain.newPage();
  await expect(async () => {
    await page.goto(`/calls/${callId}/sizes`);
    await page
      .getByRole("link", { name: /^Change … the size of Applicant 1/ })
      .first()
      .click({ timeout: 2000 });
  }).toPass();
  const move = page.getByRole("combobox", { name: "Move to" }).filter({ visible: true });
  await move.selectOption("4X");
  await page.getByRole("button", { name: "Move and lock" }).filter({ visible: true }).click();
  // A bust of 100 cm is nearest to L, 102 cm; 4X, 142 cm, is four sizes further.
  await expect(page.getByText(/4X is 4 sizes away from L/).filter({ visible: true })).toBeVisible();
  await expect(page.getByText(/bust 42\.0 cm below/).filter({ visible: true })).toBeVisible();
  expect(await query("SELECT FROM application WHERE call_id = $1 AND size IS NOT NULL", [callId])).toHaveLength(0);
  await page.getByRole("button", { name: "Move anyway and lock" }).filter({ visible: true }).click();
  await expect(page.getByText("locked by you").filter({ visible: true }).first()).toBeVisible();
  expect(await query("SELECT size FROM application WHERE call_id = $1 AND size IS NOT NULL", [callId])).toEqual([
    { size: "size-4x" },
  ]);
  await plain.close();
});
