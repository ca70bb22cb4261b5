import { randomUUID } from "node:crypto";
import type { Browser, Page } from "@playwright/test";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { ANALYSIS_MS, expectNoSidewaysScroll, expectResults } from "./import-call";
import { expect, test } from "./fixtures";
import { importPattern } from "./make-pattern";
import { goHome, openMeasurement, openStep, tapeLabel, unfold } from "./tester-steps";

const SIZES = ["size-s", "size-l"];
const SAVED = "Saved.";

function inDays(days: number): string {
  return new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
}

/** A phone of somebody who is signed in nowhere. */
async function phone(browser: Browser): Promise<Page> {
  const context = await browser.newContext({
    ...{ baseURL: process.env.NEXTAUTH_URL, locale: "en-GB", timezoneId: "America/Halifax" },
    ...{ viewport: { width: 360, height: 740 }, hasTouch: true },
  });
  return await context.newPage();
}

interface Applicant {
  readonly name: string;
  readonly bust: string;
  readonly arm: string;
}

async function apply(page: Page, address: string, { name, bust, arm }: Applicant): Promise<void> {
  await page.goto(address);
  await page.getByRole("link", { name: "Apply to test" }).first().click();
  await page.getByLabel("Name").fill(name);
  await page.getByLabel("E-mail").fill(`${randomUUID()}@example.org`);
  await page.getByRole("textbox", { name: "Bust" }).fill(bust);
  await page.getByRole("textbox", { name: "Upper arm" }).fill(arm);
  await page.getByRole("radio", { name: "I have tested a few patterns" }).check();
  await page.getByRole("checkbox", { name: /^I have read the agreement/ }).check();
  await page.getByRole("checkbox", { name: "I am 18 or over." }).check();
  await page.getByRole("button", { name: "Send application" }).click();
  await expect(page.getByText("Thank you: your application is sent")).toBeVisible();
}

async function createListedCall(page: Page): Promise<string> {
  await page.goto(`/patterns/${await importPattern(page)}`);
  await page.getByRole("button", { name: "New test" }).click();
  await page.getByLabel("Title").fill("Tide test");
  await page.getByRole("checkbox", { name: "The same for all sizes" }).uncheck();
  for (const { id, label } of saltmarshPattern.sizes) {
    const places = SIZES.includes(id) ? "1" : "0";
    await page.getByLabel(`Minimum in ${label}`, { exact: true }).fill(places);
    await page.getByLabel(`Spots in ${label}`, { exact: true }).fill(places);
  }
  await page.getByLabel("Last day to apply").fill(inDays(9));
  await page.getByLabel("Testers start on").fill(inDays(12));
  await page.getByLabel("Swatches by").fill(inDays(20));
  await page.getByLabel("Reports by").fill(inDays(60));
  await page.getByLabel("What testers get").fill("The pattern.");
  await page.getByLabel("Who is responsible").fill("Invented Designs");
  await page.getByLabel("How to reach them").fill("privacy@example.org");
  await page.getByRole("button", { name: "Publish" }).click();
  await expect(page.getByText("Everybody can read it on the")).toBeVisible();
  return (await page.getByRole("link", { name: "tester call", exact: true }).getAttribute("href")) ?? "";
}

/** The link in the message that the designer copies for somebody. */
async function linkFor(page: Page, name: string): Promise<string> {
  await page.getByText(`Message to copy for ${name}`).click();
  const message = await page.getByLabel(`Message for ${name}`).inputValue();
  return /https?:\S+\/invited\/\S+/.exec(message)?.[0] ?? "";
}

async function accept(page: Page, link: string): Promise<string> {
  await page.goto(link);
  await page.getByRole("button", { name: "Accept" }).click();
  await expect(page.getByRole("heading", { name: "Make your swatch" })).toBeVisible();
  await expectNoSidewaysScroll(page);
  return page.url();
}

async function swatch(page: Page, stitches: string): Promise<void> {
  await openStep(page, "Swatch");
  await unfold(page, /^Needle: 4 mm, as in the pattern/);
  await page.getByLabel("Needle").fill("4");
  await page.getByLabel("Stitches", { exact: true }).fill(stitches);
  await page.getByLabel("Rows or rounds").fill("30");
  await page.getByRole("radio", { name: "Yes" }).check();
  await expect(page.getByText(new RegExp(`You have ${stitches} stitches and 30 rows`))).toBeVisible();
  await expect(page.getByText(SAVED)).toBeVisible();
}

async function measure(page: Page, measurement: string, cm: string): Promise<void> {
  await openStep(page, "Measurements");
  await openMeasurement(page, measurement);
  await page.getByLabel(tapeLabel(measurement)).fill(cm);
  await page.getByLabel(tapeLabel(measurement)).blur();
  await expect(page.getByText("Saving …")).toBeHidden();
  await expect(page.getByText(SAVED)).toBeVisible();
}

async function send(page: Page, version = 1): Promise<void> {
  await openStep(page, "Review and send");
  await page.getByRole("button", { name: version === 1 ? "Send report" : "Send changes" }).click();
  await expect(page.getByText(`Your report is sent, version ${version}. Thank you.`)).toBeVisible();
}

test("a whole call, from the open page to the gap page: one drops out, one is off gauge, one lays every girth flat", async ({
  page,
  designer,
  browser,
}) => {
  test.setTimeout(ANALYSIS_MS + 180_000);
  expect(designer.accountId).not.toBe("");
  const address = await createListedCall(page);
  const [ann, bea, cleo] = [await phone(browser), await phone(browser), await phone(browser)];
  await apply(ann, address, { name: "Ann", bust: "86", arm: "27" });
  await apply(bea, address, { name: "Bea", bust: "88", arm: "27 1/2" });
  await apply(cleo, address, { name: "Cleo", bust: "40 in", arm: "12 3/8 in" });

  const call = address.replace("/open-calls/", "/calls/");
  await page.goto(`${call}/applications`);
  for (const name of ["Ann", "Bea", "Cleo"]) {
    const decision = page.getByRole("group", { name: `Your decision on ${name}` });
    await decision.getByRole("button", { name: "Yes" }).click();
    await expect(decision.getByRole("button", { name: "Yes" })).toHaveAttribute("aria-pressed", "true");
  }
  await page.goto(`${call}/sizes`);
  await page.getByRole("button", { name: "Assign sizes" }).click();
  await page.getByRole("button", { name: "Invite 2 people" }).click();
  await expect(page.getByText("2 people are invited")).toBeVisible();
  const [annLink, cleoLink] = [await linkFor(page, "Ann"), await linkFor(page, "Cleo")];

  const annHome = await accept(ann, annLink);
  await ann.getByText("I have to stop …").click();
  await ann.getByRole("button", { name: "Yes, I have to stop" }).click();
  await expect(ann.getByText(/You have stopped|You had to stop/).first()).toBeVisible();
  expect(annHome).toContain("/testing/");

  await page.goto(`${call}/sizes`);
  await expect(page.getByRole("heading", { name: "1 open spot in S" })).toBeVisible();
  await page.getByRole("button", { name: "Invite to S" }).click();
  await expect(page.getByRole("heading", { name: "1 open spot in S" })).toHaveCount(0);
  await accept(bea, await linkFor(page, "Bea"));

  // Off gauge: 20 stitches where the pattern has 22, so everything counted across comes out a tenth wider.
  await swatch(bea, "20");
  await expect(bea.getByText("You can continue with this gauge")).toBeVisible();
  await bea.getByRole("link", { name: "Send my swatch" }).click();
  await bea.getByLabel("I start the garment with this gauge").check();
  await bea.getByRole("button", { name: "Send my swatch" }).click();
  await expect(bea.getByText("Your swatch is sent. Thank you.")).toBeVisible();
  await page.goto(`${call}/progress`);
  await expect(async () => {
    await page.reload();
    await expect(page.getByRole("row", { name: /Bea/ })).toContainText(/off gauge/i, { timeout: 1_000 });
  }).toPass({ timeout: ANALYSIS_MS });
  // By hand: 212 stitches at 2 to the cm.
  await measure(bea, "Bust", "106");
  await measure(bea, "Length", "53,5");
  await send(bea, 2);

  await accept(cleo, cleoLink);
  await swatch(cleo, "22");
  await measure(cleo, "Upper arm", "19.5");
  await expect(cleo.getByText(/was it laid flat and not doubled/)).toBeVisible();
  // By hand: 248 stitches at 2.2 to the cm are 112.7 cm around.
  await measure(cleo, "Bust", "56");
  await cleo.getByRole("button", { name: "Use 2 × 56 = 112.0 cm" }).click();
  await expect(cleo.getByText("Doubled: 112.0 cm around.")).toBeVisible();
  await send(cleo);

  await page.goto(`${call}/progress`);
  await expect(page.getByRole("row", { name: /Ann/ })).toContainText(/stopped/i);
  // Bea's gauge can no longer be changed, so that it is no alarm any more.
  await expect(page.getByRole("row", { name: /Bea/ })).not.toContainText(/off gauge/i);
  // The arm's question was not answered: it is excluded automatically, with its entry error named, until somebody decides otherwise.
  await page.goto(`${call}/mistakes`);
  await expectResults(page);
  await expect(page.getByRole("main")).toContainText("Cleo");
  await expect(page.getByRole("main")).toContainText(/flat/);
  await page.goto(`${call}/differences?cell=size-l.bust`);
  await expectResults(page);
  await expect(page.getByText("Cleo").first()).toBeVisible();
  await page.goto(`${call}/differences?cell=size-s.bust`);
  await expectResults(page);
  await expect(page.getByText("Their gauge explains").first()).toBeVisible();

  await goHome(bea);
  await openStep(bea, "Yarn");
  await bea.getByLabel("About how many hours").fill("30");
  await expect(bea.getByText(SAVED)).toBeVisible();
  await openStep(bea, "Review and send");
  await expect(bea.getByText("30 hours.")).toBeVisible();
  await page.goto(`${call}/progress`);
  await page.getByText("Close the test …").click();
  await page.getByRole("button", { name: "Close the test" }).click();
  await expect(page.getByRole("button", { name: "Reopen the test" })).toBeVisible();
  await bea.getByRole("button", { name: "Send changes" }).click();
  await expect(bea.getByText(/This test is closed/).first()).toBeVisible();
  await Promise.all([ann, bea, cleo].map((person) => person.context().close()));
});
