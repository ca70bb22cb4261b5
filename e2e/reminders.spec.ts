import { randomUUID } from "node:crypto";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { linkIn, startMailing } from "./mailed-journey";
import { publishListing } from "./make-open-call";
import { makeTester } from "./make-tester";
import { startToday } from "./start-today";
import { violations } from "./violations";

/** Somebody who accepted days ago, whose test starts today where they are. */
async function testerOfToday() {
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  const address = `${randomUUID()}@example.org`;
  await query("INSERT INTO tester_contact (tester_id, name, email) VALUES ($1, 'Invented Tester', $2)", [
    tester.testerId,
    address,
  ]);
  const { zone, dates } = await startToday(tester.testerId);
  await publishListing(tester.callId, { timeZone: zone });
  return { ...tester, address, zone, dates };
}

test("a tester is reminded in their morning, takes the dates along and chooses how often", async ({ browser }) => {
  test.setTimeout(240_000);
  const { mailTo, restart, stop } = await startMailing();
  try {
    const tester = await testerOfToday();
    // A server that starts asks at once who is to be reminded.
    await restart();
    const phone = await browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true });
    const own = await phone.newPage();
    const mail = await mailTo(tester.address, "starts today");

    const calendar = await own.request.get(linkIn(mail, "Add the dates to your calendar"));
    expect(calendar.headers()["content-type"]).toContain("text/calendar");
    expect(await calendar.text()).toContain(`DTSTART;VALUE=DATE:${tester.dates.startOn.replaceAll("-", "")}`);

    // Whoever looks changes nothing; a mail reader unsubscribes by POST, without a sign-in.
    const choice = linkIn(mail, "Get fewer of these, or none");
    await own.goto(choice);
    await expect(own.getByRole("radio", { name: /^When something is due/ })).toBeChecked();
    await own.goto(`${choice}/stop`);
    await expect(own.getByRole("radio", { name: /^When something is due/ })).toBeChecked();
    expect(await violations(own)).toEqual([]);
    await expectNoSidewaysScroll(own);
    const answer = await phone.request.post(`${choice}/stop`, { form: { "List-Unsubscribe": "One-Click" } });
    expect(answer.status()).toBe(200);
    await own.reload();
    await expect(own.getByRole("radio", { name: "Never" })).toBeChecked();
    await own.getByRole("radio", { name: /^Once a week/ }).check();
    await own.getByRole("button", { name: "Save" }).click();
    await expect(own.getByText("Saved.")).toBeVisible();

    await own.goto(linkIn(mail, "Open your test"));
    await own.getByRole("button", { name: "Open your test" }).click();
    await expect(own.getByText(/^You get one reminder by e-mail a week/)).toBeVisible();
    await own.getByRole("link", { name: "Change reminders" }).click();
    await expect(own.getByLabel("Time zone")).toHaveValue(tester.zone);
    await own.getByLabel("Time zone").fill("Lisbon");
    await own.getByRole("button", { name: "Save" }).click();
    await expect(own.getByText("This is not a known time zone. Choose one such as Europe/Lisbon.")).toBeVisible();
    await own.getByLabel("Time zone").fill("Europe/Lisbon");
    await own.getByRole("button", { name: "Save" }).click();
    await expect(own.getByText("Saved.")).toBeVisible();
    expect(await violations(own)).toEqual([]);
    await expectNoSidewaysScroll(own);
    await own.getByRole("link", { name: /^← Your test/ }).click();
    await expect(own.getByText("They come at eight in the morning, Lisbon time.")).toBeVisible();
    await phone.close();
  } finally {
    await stop();
  }
});

test("a designer switches one message off and rewrites another, and the later of two tabs is asked", async ({
  page,
}) => {
  test.setTimeout(240_000);
  const tester = await testerOfToday();
  const { at, stop } = await startMailing();
  try {
    page.context().setDefaultTimeout(30_000);
    await signInByCookie(page.context(), tester.designer);
    await page.goto(at(`/calls/${tester.callId}`));
    await page.getByRole("link", { name: "Set up", exact: true }).click();
    await page.getByRole("link", { name: "Messages", exact: true }).click();
    await expect(page.getByRole("heading", { name: "Messages", exact: true })).toBeVisible();
    await page.getByRole("button", { name: /^Switch off ?: Half way$/ }).click();
    await expect(page.getByRole("button", { name: /^Switch on ?: Half way$/ })).toBeVisible();
    await expect(page.getByText("It is always sent, because it holds the link to accept or decline.")).toBeVisible();
    await expect(page.getByRole("button", { name: /: Spot offered$/ })).toHaveCount(0);
    await page.getByRole("button", { name: /^Switch off ?: Answer to a question$/ }).click();
    await expect(page.getByRole("button", { name: /^Switch on ?: Answer to a question$/ })).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByRole("link", { name: "Answer to a question" }).click();
    // Whatever the designer writes, the answer stays in it.
    await page.getByRole("textbox", { name: "Message" }).fill("Good question, [name].");
    await expect(page.getByText("Good question, Invented Tester.")).toBeVisible();
    await expect(page.getByText("(your answer)")).toBeVisible();
    await page.goBack();

    const second = await page.context().newPage();
    await page.getByRole("link", { name: "Report missing" }).click();
    await expect(page.getByRole("heading", { name: "Report missing" })).toBeVisible();
    await second.goto(page.url());
    await expect(second.getByLabel("Subject")).toBeVisible();
    await page.getByLabel("Subject").fill("Still there, [nmae]?");
    await page.getByRole("button", { name: "Save" }).click();
    await expect(page.getByText("Nothing can be filled in for “[nmae]”.")).toBeVisible();
    await page.getByLabel("Subject").fill("Still there, [name]?");
    await page.getByLabel("Your note").fill("I am away on Sunday.");
    await expect(page.getByText("Still there, Invented Tester?")).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByRole("button", { name: "Save" }).click();
    await expect(page.getByText("Saved. Back to all messages.")).toBeVisible();

    // In the other tab somebody else has not seen that.
    await second.getByLabel("Subject").fill("Hello?");
    await second.getByRole("button", { name: "Save" }).click();
    await expect(second.getByText(/^Somebody else changed this message .* “Still there, \[name\]\?”/)).toBeVisible();
    await expect(second.getByLabel("Subject")).toHaveValue("Hello?");
    await second.getByRole("button", { name: "Save" }).click();
    await second.getByRole("link", { name: "all messages" }).click();
    await expect(second.getByText("In your words")).toHaveCount(1);
    await second.getByRole("link", { name: "Report missing" }).click();
    await expect(second.getByLabel("Subject")).toHaveValue("Hello?");
    await second.getByRole("button", { name: "Use Sizewright’s words again" }).click();
    await expect(second.getByLabel("Subject")).toHaveValue(/^Your report on/);

    await page.goto(at("/account"));
    await page
      .getByRole("group", { name: /^Daily summary/ })
      .getByRole("radio", { name: "Never" })
      .check();
    await expect(page.getByLabel("Time zone")).toHaveValue("Pacific/Chatham");
    await page.getByRole("button", { name: "Save" }).nth(1).click();
    await expect(page.getByText("Saved.")).toBeVisible();
  } finally {
    await stop();
  }
});
