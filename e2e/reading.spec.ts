import type { Page } from "@playwright/test";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { query } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester, typeReport } from "./make-tester";

// What cannot be fetched without a connection is one that the browser tells of.
test.use({ expectedErrors: /ERR_INTERNET_DISCONNECTED|ERR_FAILED/ });

const SIZES = /Cast on/;

/** The passage that begins the body. */
function castOn(page: Page) {
  return page.locator("[data-passage] > p").filter({ hasText: SIZES }).first();
}

async function copies(page: Page): Promise<number> {
  return await page.evaluate(async () => (await caches.keys()).length);
}

test("a tester marks where they are, chooses their size, and reads on without a connection", async ({
  page,
  context,
}) => {
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  const address = `/testing/${tester.testerId}/pattern`;
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await page
    .getByRole("link", { name: /The pattern/ })
    .first()
    .click();
  await expect(page.getByRole("heading", { level: 1, name: "The pattern" })).toBeVisible();
  await expect(page.getByRole("button", { name: "All sizes" })).toHaveAttribute("aria-pressed", "true");
  // No link is repeated at every passage.
  await expect(page.getByRole("link", { name: /Ask about this/ })).toHaveCount(0);
  await castOn(page).click();
  await expect(page.getByRole("link", { name: "Ask about this" })).toHaveCount(1);
  await page.getByRole("button", { name: "I am here" }).click();
  await expect(page.getByText("You are here").last()).toBeVisible();
  await page.reload();
  await page
    .getByRole("navigation", { name: "Parts of the pattern" })
    .getByRole("link", { name: "You are here" })
    .click();
  await expect(castOn(page)).toBeInViewport();

  // With a keyboard the list does the same.
  await page.getByText("List of passages").press("Enter");
  await page.getByLabel("Passage").selectOption({ index: 4 });
  await page.getByRole("button", { name: "I am here" }).press("Enter");
  await expect(page.locator('[data-own="true"]')).toBeInViewport();

  const all = await castOn(page).innerText();
  await page.getByRole("button", { name: "Only my size" }).click();
  await expect(page.getByRole("button", { name: "Only my size" })).toHaveAttribute("aria-pressed", "true");
  expect((await castOn(page).innerText()).length).toBeLessThan(all.length);
  await expectNoSidewaysScroll(page);

  await expect.poll(() => copies(page)).toBe(1);
  await page.reload();
  await expect(castOn(page)).toBeVisible();
  await context.setOffline(true);
  await page.reload();
  await expect(castOn(page)).toBeVisible();
  await expect(page.getByText("This is the text as you last read it, on")).toBeVisible();
  await castOn(page).click();
  await page.getByRole("button", { name: "I am here" }).click();
  await page.reload();
  await expect(page.locator('[data-own="true"]')).toContainText("Cast on");
  await context.setOffline(false);
  await page.reload();
  await expect(page.getByText("This is the text as you last read it")).toHaveCount(0);
  await expect(page.locator('[data-own="true"]')).toContainText("Cast on");

  // Once the test has ended, and where people arrive who sign out, no copy stays.
  await query("UPDATE call SET status = 'closed' WHERE id = $1", [tester.callId]);
  await page.goto(address);
  await expect.poll(() => copies(page)).toBe(0);
  await query("UPDATE call SET status = 'open' WHERE id = $1", [tester.callId]);
  await page.goto(address);
  await expect.poll(() => copies(page)).toBe(1);
  await page.goto("/sign-in");
  await expect.poll(() => copies(page)).toBe(0);
});

test("a sent report keeps which numbers its tester read", async ({ page, context }) => {
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  await letIn(context, tester);
  await typeReport(tester, { "reading.bust.1.value": "102", "reading.bust.1.way": "around", asWritten: "yes" });
  await page.goto(`/testing/${tester.testerId}/pattern`);
  await page.getByRole("button", { name: "Only my size" }).click();
  await expect(page.getByText(/Your report says so/)).toBeVisible();
  await page.goto(`/testing/${tester.testerId}/report`);
  await page.getByRole("button", { name: /^Send/ }).click();
  await expect
    .poll(() => query("SELECT document->>'sizesShown' AS shown FROM report WHERE tester_id = $1", [tester.testerId]))
    .toEqual([{ shown: "own" }]);
});
