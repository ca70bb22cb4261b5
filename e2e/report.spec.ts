import { patternDocument } from "../test/factories/pattern";
import { expectNoSidewaysScroll } from "./import-call";
import { query } from "./designer";
import { expect, test } from "./fixtures";
import { letIn, makeTester } from "./make-tester";
import { expectOpen, goHome, openMeasurement, openStep, rowOf, storedFields, tapeLabel, unfold } from "./tester-steps";

// A lost connection is one that the browser tells of.
test.use({ expectedErrors: /ERR_INTERNET_DISCONNECTED|Failed to fetch/ });

const SAVED = "Saved.";

test("a report saves itself, through a lost connection and on two devices, and each version is sent once", async ({
  context,
  page,
  browser,
}) => {
  const tester = await makeTester(patternDocument());
  const home = `/testing/${tester.testerId}`;
  await letIn(context, tester);
  await page.goto(home);
  await openStep(page, "Swatch");
  await expect(page.getByText(SAVED)).toBeVisible();
  await unfold(page, /^Hook: 4 mm, as in the pattern/);
  await page.getByLabel("Hook").fill("4");
  await page.getByLabel("Stitches", { exact: true }).fill("18");
  await page.getByLabel("Rows or rounds").fill("25");
  await page.getByRole("radio", { name: "Yes" }).check();
  // By hand: 18 stitches against 20 make every width 20 / 18 as wide; twice 98 / 2 cm would be 108.9 and not 98.
  await expect(page.getByText("You have 18 stitches and 25 rows over 10 cm; the pattern has 20 and 25.")).toBeVisible();
  await expect(page.getByText(/“Bust” would come out 10.9 cm bigger than planned/)).toBeVisible();
  await expect(page.getByText("You can continue with this gauge")).toBeVisible();
  await expectNoSidewaysScroll(page);

  await openStep(page, "Measurements");
  await expectOpen(page, "Bust");
  await context.setOffline(true);
  await page.getByLabel(tapeLabel("Bust")).fill("54");
  await expect(
    page.getByText("No connection: 1 field is stored on this device and will be sent when you are back online."),
  ).toBeVisible();
  await page.close();
  await context.setOffline(false);
  const next = await context.newPage();
  await next.goto(home);
  await openStep(next, "Measurements");
  await openMeasurement(next, "Bust");
  await expect(next.getByLabel(tapeLabel("Bust"))).toHaveValue("54");
  // This gauge gives 108.9 + 2 cm: 54 is half of it.
  await expect(next.getByText(/half of what we would expect here .* was it laid flat and not doubled/)).toBeVisible();
  await next.getByRole("button", { name: "Use 2 × 54 = 108.0 cm" }).click();
  await expect(next.getByText("Doubled: 108.0 cm around.")).toBeVisible();
  await expect(next.getByRole("button", { name: "flat, one width", pressed: true })).toBeVisible();
  await unfold(next, /^Measured: laid flat, one width/);
  await expect(next.getByRole("radio", { name: /Sizewright doubles it/ })).toBeChecked();

  const tablet = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL });
  await letIn(tablet, tester);
  const tabletPage = await tablet.newPage();
  await tabletPage.goto(home);
  await openStep(tabletPage, "Your counts");
  await openStep(next, "Your counts");
  await tabletPage.getByLabel("About how many hours").fill("39");
  await expect(tabletPage.getByText("Saving …")).toBeVisible();
  await expect(tabletPage.getByText(SAVED)).toBeVisible();
  await next.getByLabel("About how many hours").fill("38");
  await expect(next.getByText("On another device you typed “39”, here “38”. Choose one.")).toBeVisible();
  // Under its own field.
  await expect(next.locator("#hours").locator("xpath=../..").getByRole("alert")).toContainText("Choose one.");
  await next.getByRole("button", { name: "Use 38" }).click();
  await expect(next.getByText(SAVED)).toBeVisible();
  await tablet.close();

  await openStep(next, "Review and send");
  await expect(next.getByText("38 hours.")).toBeVisible();
  await expect(next.getByText("54 cm, laid flat")).toBeVisible();
  await next.getByRole("button", { name: "Send report" }).click();
  await expect(next.getByText("Your report is sent, version 1. Thank you.")).toBeVisible();
  await openStep(next, "Fit");
  await openStep(next, "Review and send");
  await expect(next.getByRole("heading", { name: "What happens next" })).toBeVisible();
  await expect(next.getByRole("button", { name: "Send changes" })).toHaveCount(0);
  expect(await query("SELECT version FROM report WHERE tester_id = $1", [tester.testerId])).toEqual([{ version: 1 }]);
});

test("a report is filled and sent without JavaScript", async ({ browser }) => {
  const context = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled: false });
  const tester = await makeTester(patternDocument(), { unit: "in" });
  await letIn(context, tester);
  const page = await context.newPage();
  await page.goto(`/testing/${tester.testerId}`);
  await openStep(page, "Measurements");
  await openMeasurement(page, "Length");
  await page.getByLabel(tapeLabel("Length")).fill("15 3/4");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await expect(page.getByLabel(tapeLabel("Length"))).toHaveValue("15 3/4");
  await expectOpen(page, "Length");
  // Opening another one saves, too.
  await page.getByLabel(tapeLabel("Length")).fill("15 5/8");
  await openMeasurement(page, "Bust");
  await expect(rowOf(page, "Length")).toContainText("15 5/8 in");
  await page.getByRole("button", { name: "washed and dried" }).click();
  await expect(page.getByRole("button", { name: "washed and dried", pressed: true })).toBeVisible();
  await page.getByLabel(tapeLabel("Bust")).fill("42 1/2");
  await page.getByRole("button", { name: /^Next: Fit|^Next: Yarn/ }).click();
  await expect(page.getByRole("heading", { name: "How it fits" })).toBeVisible();
  expect(await storedFields(tester, /^reading/)).toEqual({
    ...{ "reading.length.1.value": "15 5/8", "reading.length.1.state": "washed" },
    ...{ "reading.bust.1.value": "42 1/2", "reading.bust.1.state": "washed" },
  });
  await openStep(page, "Review and send");
  await expect(page.getByText("15 5/8 in", { exact: true }).first()).toBeVisible();
  await page.getByRole("button", { name: "Send report" }).click();
  await expect(page.getByText("Your report is sent, version 1. Thank you.")).toBeVisible();
  await query("UPDATE call SET status = 'closed', closed_at = now() WHERE id = $1", [tester.callId]);
  await openStep(page, "Fit");
  await expect(page.getByRole("button", { name: "Save" })).toHaveCount(0);
  await context.close();
});

test("a report that was sent by phone says that nothing changed since, until something did", async ({
  context,
  page,
}) => {
  const tester = await makeTester(patternDocument());
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await openStep(page, "Swatch");
  await page.getByLabel("Stitches", { exact: true }).fill("20");
  await page.getByLabel("Rows or rounds").fill("25");
  await expect(page.getByText("Saving …")).toBeHidden();
  await openStep(page, "Your counts");
  await page.getByLabel("About how many hours").fill("38");
  await page.getByLabel("About how many hours").blur();
  await openStep(page, "Review and send");
  await expect(page.getByText("38 hours.")).toBeVisible();
  await page.getByRole("button", { name: "Send report" }).click();
  await expect(page.getByText("Your report is sent, version 1. Thank you.")).toBeVisible();
  await goHome(page);
  await expect(page.getByRole("link", { name: /^done: Review and send sent$/ })).toBeVisible();

  const hours = async (text: string) => {
    await openStep(page, "Your counts");
    await page.getByLabel("About how many hours").fill(text);
    await page.getByLabel("About how many hours").blur();
    await expect(page.getByText(SAVED)).toBeVisible();
    await openStep(page, "Review and send");
  };
  await hours("39");
  await expect(page.getByText("39 hours.")).toBeVisible();
  await expect(page.getByText("Changed since then: 1 field.")).toBeVisible();
  await hours("38");
  await expect(page.getByText("Your report is sent, version 1. Thank you.")).toBeVisible();
  await page.getByText("What you sent").click();
  await expect(page.getByText("38 hours.")).toBeVisible();
});

test("a swatch gives no advice until the questions about it are answered", async ({ context, page }) => {
  const fabrics = [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 16, rows: 25 } }];
  const tester = await makeTester(patternDocument({ fabrics }));
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await openStep(page, "Swatch");
  await unfold(page, /^Hook/);
  await page.getByLabel("Hook").fill("6");
  await page.getByLabel("Stitches", { exact: true }).fill("25");
  await page.getByLabel("Rows or rounds").fill("16");
  await page.getByRole("radio", { name: "Yes" }).check();
  const waiting = page.getByText("This waits for your answer above.");
  await expect(page.getByText(/Is this US size 6, which is 4 mm, or 6 mm\?/)).toBeVisible();
  await expect(page.getByText(/Are stitches and rows swapped\?/)).toBeVisible();
  await expect(waiting).toBeVisible();
  await expect(page.getByText(/^You have 25 stitches|would come out|Try one size/)).toHaveCount(0);
  await expectNoSidewaysScroll(page);

  await page.getByRole("button", { name: "It is US 6" }).click();
  await expect(page.getByText("Read as 4 mm.")).toBeVisible();
  await expect(waiting).toBeVisible();
  await page.getByRole("button", { name: "Swap them: 16 stitches and 25 rows" }).click();
  await expect(page.getByText("You have 16 stitches and 25 rows over 10 cm; the pattern has 16 and 25.")).toBeVisible();
  await expect(waiting).toBeHidden();

  await page.getByLabel("Stitches", { exact: true }).fill("4");
  await page.getByLabel("Rows or rounds").fill("6.5");
  await page.getByRole("button", { name: "It was 1 in" }).click();
  // By hand: 4 stitches in 2.54 cm are 15.7 in 10 cm, 6.5 rows are 25.6.
  await expect(page.getByText(/^You have 15.7 stitches and 25.6 rows over 10 cm/)).toBeVisible();
});
