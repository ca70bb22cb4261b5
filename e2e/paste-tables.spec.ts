import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./fixtures";
import { takenOver } from "./taken-over";

const MEASUREMENTS = `Meadow jumper, invented\t\t\t\t\t
\tMeasurement (cm)\tXS\tS\tM\tL
\tTo fit bust\t76–81\t82–87\t88–93\t94–99
A\tBust around\t90,5\t96.5\t102\t108
\tStitches at the bust\t76\t82\t86\t92
B\tUpper arm around\t31\t33 1/2\t36\t38
C\tBody length\t52\t53\t54\t55
D\tArmhole depth\t18\t19\t20\t21
\tRows at the armhole\t42\t44\t48\t50`;

const REPORTS = `Timestamp,Your name,What size did you make?,Swatch: stitches over 10 cm,Swatch: rows over 10 cm,"A. Bust around, in cm",B. Upper arm around (inches),Body length,D,Stitches at the bust
1 May,Ann,Size M,17,24,101,14 1/4,"54,5","20,5",86
1 May,Bea,xs,18 sts,25,89,12 3/8,52,,76
2 May,Cat,L,17.5,24,109,15,55,21,92
2 May,Dot,S,16.5,24,98,13,53,n/a,82`;

const PASSWORD = "a long enough pass phrase 77";

/** Counts what a person does: a click, a text typed or pasted, a choice, one each. */
class Hand {
  actions = 0;

  async click(target: Locator): Promise<void> {
    await target.click();
    this.actions += 1;
  }

  async type(target: Locator, text: string): Promise<void> {
    await target.fill(text);
    this.actions += 1;
  }
}

async function signUp(page: Page, hand: Hand): Promise<void> {
  const email = `iris-${crypto.randomUUID()}@example.org`;
  await page.goto("/sign-up");
  await takenOver(page.getByLabel("Name"));
  await hand.type(page.getByLabel("Name"), "Iris");
  await hand.type(page.getByLabel("E-mail"), email);
  await hand.type(page.getByLabel("Password", { exact: true }), PASSWORD);
  await hand.click(page.getByRole("button", { name: "Create account" }));
  await page.waitForURL((url) => !url.pathname.startsWith("/sign-up"));
}

async function fillGauge(page: Page, hand: Hand): Promise<void> {
  await hand.type(page.getByLabel("Gauge: stitches"), "17");
  await hand.type(page.getByLabel("and rows"), "24");
  await hand.type(page.getByLabel("Hook, in mm"), "5");
}

test("a designer pastes two tables and is on the gap page in under 20 actions", async ({ page }) => {
  const hand = new Hand();
  await signUp(page, hand);
  await hand.click(page.getByRole("link", { name: "Import from a spreadsheet" }).first());
  await page.waitForURL(/patterns\/new\/paste/);
  await hand.type(page.getByLabel("Your finished measurements"), MEASUREMENTS);
  await fillGauge(page, hand);
  await hand.click(page.getByRole("button", { name: "Create pattern" }));
  await hand.click(page.getByRole("link", { name: "Import testers’ reports" }));
  await hand.type(page.getByLabel("Your testers’ reports"), REPORTS);
  await expect(page.getByText("4 of 4 measurements, 4 testers, 14 of 14 readings, 4 swatches.")).toBeVisible();
  await expect(page.getByText("Not imported: “Timestamp” (4 answers).")).toBeVisible();
  await hand.click(page.getByRole("button", { name: "Add reports and see differences" }));
  await page.waitForURL(/\/calls\/[0-9a-f-]{36}\/differences$/);
  expect(hand.actions).toBeLessThan(20);
});

test("faults and hard-to-believe numbers are told at their cells, and mended there", async ({ page }) => {
  const hand = new Hand();
  await signUp(page, hand);
  // A slow connection: someone pastes before the page's scripts have arrived.
  let goOn = () => {};
  const pasted = new Promise<void>((resolve) => {
    goOn = resolve;
  });
  await page.route(/\.js(\?|$)/, async (route) => {
    await pasted;
    await route.continue();
  });
  await page.goto("/patterns/new/paste", { waitUntil: "commit" });
  await hand.type(page.getByLabel("Your finished measurements"), MEASUREMENTS.replace("33 1/2", "wide"));
  goOn();
  const wide = page.getByLabel(/^B Upper arm around, S\. “wide” is not a number/);
  await expect(wide).toHaveAttribute("aria-invalid", "true");
  await expect(page.getByText("Row 6 (B Upper arm around), column S:")).toBeVisible();
  await wide.fill("33,5");
  await expect(page.getByText("1 problem to fix")).toHaveCount(0);
  await page.reload();
  await expect(page.getByLabel("Your finished measurements")).toHaveValue(/33,5/);
  await fillGauge(page, hand);
  await hand.click(page.getByRole("button", { name: "Create pattern" }));
  await hand.click(page.getByRole("link", { name: "Import testers’ reports" }));
  await hand.type(page.getByLabel("Your testers’ reports"), REPORTS.replace(",xs,", ",7,").replace(",109,", ",9,"));
  await expect(page.getByLabel("Unit of “B. Upper arm around (inches)”")).toHaveValue("in");
  await page.getByLabel(/“7” is not one size of this pattern\. Its sizes are XS, S, M, L\./).fill("XS");
  await expect(page.getByText("Bust around of 9 cm, where the pattern says 108 cm: is that right?")).toBeVisible();
  await page.getByRole("button", { name: "Add reports and see differences" }).click();
  await expect(page).toHaveURL(/reports\/paste/);
  await page.getByLabel("Yes, that’s correct").check();
  await page.getByRole("button", { name: "Add reports and see differences" }).click();
  await page.waitForURL(/\/calls\/[0-9a-f-]{36}\/differences$/);
});

const WITHOUT_UNIT = `Size\tS\tM\tL
Bust around\t36\t38\t41
Body length\t21\t21\t22
Balls of yarn\t6\t7\t8`;

const MIXED = `Name,Size,Bust around,Body length,Anything else?
Ann,S,91.5,53,
Bea,M,38.25,53.5,Sorry for the inches
Cat,L,104,long enough,
Dot,7,104,56,`;

test("the unit is asked once, what is left out is told, and answers in inches are read by one tap", async ({
  page,
}) => {
  const hand = new Hand();
  await signUp(page, hand);
  await page.goto("/patterns/new/paste");
  await takenOver(page.getByLabel("Your finished measurements"));
  await hand.type(page.getByLabel("Your finished measurements"), WITHOUT_UNIT);
  await expect(page.getByText("Is this table in inches?")).toBeVisible();
  await expect(
    page.getByText("2 of 2 measurements in 3 sizes, 6 of 6 numbers; 0 counts, 0 body measurements."),
  ).toBeVisible();
  await expect(page.getByText("Ignored: row 4 “Balls of yarn”.")).toBeVisible();
  await hand.click(page.getByRole("button", { name: "Yes, read it in inches" }));
  await expect(page.getByText("Is this table in inches?")).toHaveCount(0);
  await hand.type(page.getByLabel("Name of the pattern"), "Reed, invented");
  await fillGauge(page, hand);
  await hand.click(page.getByRole("button", { name: "Create pattern" }));
  await hand.click(page.getByRole("link", { name: "Import testers’ reports" }));
  await hand.type(page.getByLabel("Your testers’ reports"), MIXED);
  await expect(page.getByText("2 of 2 measurements, 3 of 4 testers, 5 of 8 readings.")).toBeVisible();
  await hand.click(page.getByRole("button", { name: "Import without these 2 answers" }));
  await hand.click(page.getByRole("button", { name: "Read it in inches" }));
  await expect(page.getByText("2 of 2 measurements, 3 of 4 testers, 5 of 8 readings, 1 comment.")).toBeVisible();
  await expect(page.getByText("2 answers are not imported")).toBeVisible();
  await hand.click(page.getByRole("button", { name: "Add reports and see differences" }));
  await page.waitForURL(/\/calls\/[0-9a-f-]{36}\/differences$/);
});

test("a table of too many rows is told to be too large", async ({ page }) => {
  await signUp(page, new Hand());
  await page.goto("/patterns/new/paste");
  const area = page.getByLabel("Your finished measurements");
  await takenOver(area);
  const line = Array.from({ length: 20 }, (_, index) => String(index + 30)).join("\t");
  await area.fill(Array.from({ length: 400 }, () => line).join("\n"));
  await expect(page.getByText(/This table has 400 rows and 20 columns; at most 300 rows/)).toBeVisible();
});
