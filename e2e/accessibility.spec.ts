import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { makeWorld } from "./access-world";
import { importCall, expectNoSidewaysScroll, expectResults } from "./import-call";
import { EDITOR_PARTS } from "../src/features/patterns/editor/editor-parts";
import { linkTo } from "../src/server/link-key";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { letIn, makeTester, typeReport } from "./make-tester";
import { importPattern } from "./make-pattern";
import { retiredWords } from "../test/retired-words";
import { violations } from "./violations";
import { openMeasurement, openStep } from "./tester-steps";
import type { Page } from "@playwright/test";

const WIDTHS = [
  { width: 1280, height: 800 },
  { width: 360, height: 740 },
];

/** The method's page speaks to statisticians too. */
const METHOD = /\/method$/;

/** A page is opened once, and looked at at a desk's width and at a phone's. */
async function expectAccessible(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expectResults(page);
  await expectThisAccessible(page, address);
}

/** Accessible at both widths, and in plain words. @param address names the page where it falls short. */
async function expectThisAccessible(page: Page, address: string): Promise<void> {
  const text = await page.locator("body").innerText();
  if (!METHOD.test(address)) expect.soft(retiredWords(text), `words of ${address}`).toEqual([]);
  for (const size of WIDTHS) {
    await page.setViewportSize(size);
    expect.soft(await violations(page), `${address} at ${size.width} px`).toEqual([]);
    await expectNoSidewaysScroll(page);
  }
}

test("pages for visitors keep WCAG 2.2 A and AA", async ({ page }) => {
  for (const address of ["/", "/sign-in", "/sign-up"]) await expectAccessible(page, address);
});

test("a pattern's pages keep WCAG 2.2 A and AA", async ({ page, designer }) => {
  test.setTimeout(300_000);
  expect(designer.accountId).not.toBe("");
  await expectAccessible(page, "/patterns");
  await page.goto(`/calls/${await importCall(page)}`);
  const pattern = await page
    .getByRole("link", { name: /Saltmarsh Tee/ })
    .first()
    .getAttribute("href");
  const addresses = [
    "/account",
    "/patterns",
    "/patterns/new/blank",
    "/patterns/new/document",
    "/patterns/new/paste",
    "/patterns/new/template",
    `${pattern}`,
    `${pattern}/measurements/upper-arm?size=size-2x`,
    `${pattern}/pieces`,
    `${pattern}/pieces?size=all`,
    `${pattern}/revisions`,
    `${pattern}/revisions/1`,
    `${pattern}/revisions/compare`,
    `${pattern}/people`,
    `${pattern}/photos`,
    `${pattern}/reports/paste`,
  ];
  for (const address of addresses) await expectAccessible(page, address);
});

test("every part of a pattern's editor keeps WCAG 2.2 A and AA", async ({ page, designer }) => {
  test.setTimeout(300_000);
  expect(designer.accountId).not.toBe("");
  const editor = `/patterns/${await importPattern(page)}/edit`;
  for (const { key } of EDITOR_PARTS) await expectAccessible(page, `${editor}?part=${key}`);
});

test("a call's pages keep WCAG 2.2 A and AA", async ({ page, designer }) => {
  test.setTimeout(300_000);
  expect(designer.accountId).not.toBe("");
  const call = `/calls/${await importCall(page)}`;
  const addresses = [
    "",
    "/differences",
    "/differences?cell=size-l.neck-width",
    "/differences?view=table",
    "/changes",
    "/correct?cell=size-l.neck-width",
    "/swatches",
    "/habits",
    "/habits?view=table",
    "/mistakes",
    "/yarn",
    "/fit",
    "/questions",
    "/thanks",
    "/method",
    "/sizes",
  ];
  for (const address of addresses) await expectAccessible(page, `${call}${address}`);
  await expectAccessible(page, `${call}/set-up`);
  await page.getByRole("button", { name: "Write a listing" }).click();
  await expect(page.getByLabel("Title")).toBeVisible();
  await expectAccessible(page, `${call}/set-up`);
  await expectAccessible(page, call.replace("/calls/", "/open-calls/"));
});

test("a tester's report keeps WCAG 2.2 A and AA, empty and with something to mend and to answer", async ({
  page,
  context,
}) => {
  test.setTimeout(300_000);
  const tester = await makeTester(saltmarshPattern);
  await letIn(context, tester);
  const lookAt = async (steps: readonly string[]) => {
    for (const step of steps) await expectAccessible(page, `/testing/${tester.testerId}/${step}`);
  };
  await lookAt(["swatch", "yarn", "report"]);
  await typeReport(tester, {
    ...{ "swatch.1.toolMm": "4", "swatch.1.stitches": "18", "swatch.1.across": "10", "swatch.1.washed": "yes" },
    ...{ "swatch.1.rows": "30", "swatch.1.along": "10", "swatch.2.stitches": "about 20" },
    ...{ "worked.neck": "abc", "reading.bust.1.value": "51", "fit.bust.says": "ضيق 🧶" },
  });
  await lookAt(["swatch", "counts", "measurements", "yarn", "fit", "report"]);
  await openStep(page, "Measurements");
  await openMeasurement(page, "Bust");
  await expectThisAccessible(page, "the measurement that asks back");
});

test("applying, an applicant's own page and the list of applications keep WCAG 2.2 A and AA", async ({ page }) => {
  test.setTimeout(300_000);
  const { callId, applicationId, link, people } = await makeWorld();
  const addresses = [`/open-calls/${callId}/apply`, `/applications/${link}`, `/applications/${link}/delete`];
  for (const address of [...addresses, "/applications/deleted"]) await expectAccessible(page, address);
  if (people.owner) await signInByCookie(page.context(), people.owner);
  const list = `/calls/${callId}/applications`;
  for (const address of [list, `${list}/${applicationId}`]) await expectAccessible(page, address);
});

test("an invitation, a tester's other pages and what the designer sees of them keep WCAG 2.2 A and AA", async ({
  page,
  context,
  designer,
}) => {
  test.setTimeout(300_000);
  await signInByCookie(context, designer);
  await expectAccessible(page, "/testing");
  const tester = await makeTester(saltmarshPattern);
  const { testerId, callId } = tester;
  await letIn(context, tester);
  await typeReport(tester, { "swatch.1.stitches": "about 20" });
  for (const path of ["", "/your-data", "/password", "/pattern"])
    await expectAccessible(page, `/testing/${testerId}${path}`);
  await query("UPDATE tester SET accepted_at = NULL WHERE id = $1", [testerId]);
  await expectAccessible(page, `/invited/${linkTo("invitation", { id: testerId, version: 1 })}`);
  await query("UPDATE tester SET accepted_at = now() WHERE id = $1", [testerId]);
  await signInByCookie(context, tester.designer);
  for (const path of ["progress", `progress/${testerId}`, "progress/add", "questions"])
    await expectAccessible(page, `/calls/${callId}/${path}`);
});
