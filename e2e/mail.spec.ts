import type { Browser, Page } from "@playwright/test";
import sharp from "sharp";
import { patternDocument } from "../test/factories/pattern";
import { MailedTester } from "./by-mail";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { linkIn, startMailing, type MailingServer } from "./mailed-journey";
import { makeOpenCall } from "./make-open-call";
import { startToday } from "./start-today";
import { enterSwatch, goHome, openMeasurement, openStep, tapeLabel } from "./tester-steps";
import { violations } from "./violations";

const TEXT = "# Body\n\nCast on 98 (118) stitches.\n";

/** A call of two spots in each of two sizes, whose pattern has a text. */
async function makeWrittenCall(owner: Parameters<typeof makeOpenCall>[0]): Promise<string> {
  const callId = await makeOpenCall(owner);
  await query(
    `INSERT INTO revision (pattern_id, number, document, reason) SELECT pattern_id, 2, $2, 'Written' FROM call WHERE id = $1`,
    [callId, JSON.stringify(patternDocument({ instructions: TEXT }))],
  );
  return callId;
}

async function fourTesters(browser: Browser, server: MailingServer): Promise<MailedTester[]> {
  const people = [
    { name: "Maja 🧶", bust: "110", size: "L" },
    { name: "Noor", bust: "90", size: "S" },
    { name: "Ola", bust: "91", size: "S" },
    { name: "Pia", bust: "109", size: "L" },
  ];
  return await Promise.all(people.map((given) => MailedTester.withPhone(browser, server, given)));
}

/** Accepts all who applied, and offers each a spot, while the mail server is away. */
async function offerSpots(page: Page, { at, mail }: MailingServer, callId: string): Promise<void> {
  await mail.stop();
  await page.goto(at(`/calls/${callId}/applications`));
  for (const decision of await page.getByRole("group", { name: /Your decision on/ }).all()) {
    await decision.getByRole("button", { name: "Yes" }).click();
    await expect(decision.getByRole("button", { name: "Yes" })).toHaveAttribute("aria-pressed", "true");
  }
  await page.goto(at(`/calls/${callId}/sizes`));
  await page.getByRole("button", { name: "Assign sizes" }).click();
  await page.getByLabel("They can reply until the end of").fill("2089-01-01");
  await expect(page.getByText("Sizewright sends them the link by e-mail.")).toBeVisible();
  await page.getByRole("button", { name: "Invite 4 people" }).click();
  await expect(page.getByText("4 people are invited")).toBeVisible();
  await expect(async () => {
    await page.reload();
    await expect(page.getByText(/Not sent to .* yet. The mail server says: “connect ECONNREFUSED/).first()).toBeVisible(
      {
        timeout: 1_000,
      },
    );
  }).toPass();
  await page.getByText("Message to copy").first().click();
  await expect(page.getByLabel(/^Message for/).first()).toHaveValue(/\/invited\//);
  await expectNoSidewaysScroll(page);
  expect(await violations(page)).toEqual([]);
  await mail.start();
}

async function publishCorrection(page: Page, { at }: MailingServer, callId: string): Promise<void> {
  await page.goto(at(`/calls/${callId}/questions`));
  await page.getByText("Write a correction").click();
  await page.getByLabel("What is wrong, and what is right").fill("The last row is worked twice.");
  await page.getByRole("button", { name: "Publish correction" }).click();
  await expect(page.getByText("No answer yet: 4")).toBeVisible();
}

async function answerCorrection(tester: MailedTester, answer: string): Promise<void> {
  await tester.openTest("A correction to");
  const news = tester.page.getByRole("region", { name: "New for you" });
  await news.getByRole("button", { name: answer }).click();
  await expect(news.getByText("The last row is worked twice.")).toBeHidden();
}

/** Sends a whole report with a photo that may be shown on social media. */
async function report({ page }: MailedTester): Promise<void> {
  await enterSwatch(page);
  await goHome(page);
  await openStep(page, "Measurements");
  for (const [measurement, cm] of [
    ["Bust", "100"],
    ["Length", "40"],
  ] as const) {
    await openMeasurement(page, measurement);
    await page.getByLabel(tapeLabel(measurement)).fill(cm);
    await page.getByLabel(tapeLabel(measurement)).blur();
    await expect(page.getByText("Saving …")).toBeHidden();
  }
  await goHome(page);
  await page.getByRole("link", { name: /Photos/ }).click();
  const create = { width: 900, height: 1200, channels: 3, background: "#a33" } as const;
  const buffer = await sharp({ create }).jpeg().toBuffer();
  await page.getByLabel("Photos", { exact: true }).setInputFiles([{ name: "1.jpg", mimeType: "image/jpeg", buffer }]);
  await page.getByRole("button", { name: "Send photos" }).click();
  await expect(page.getByRole("img", { name: "Your photo: Front" })).toBeVisible();
  await page.getByRole("checkbox", { name: "On social media" }).check();
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await goHome(page);
  await openStep(page, "Review and send");
  await page.getByRole("button", { name: "Send report" }).click();
  await expect(page.getByText("Your report is sent, version 1. Thank you.")).toBeVisible();
}

test("four people test from applying to being thanked by the links in their mail alone", async ({
  page,
  browser,
  designer,
}) => {
  test.setTimeout(400_000);
  const server = await startMailing();
  const { at, mail, mailTo, stop } = server;
  try {
    const callId = await makeWrittenCall(designer);
    const testers = await fourTesters(browser, server);
    const [maja, noor, ola, pia] = testers;
    if (!maja || !noor || !ola || !pia) throw new Error("nobody tests");
    for (const tester of testers) await tester.apply(callId);
    const received = await maja.mail("Your application to test");
    expect(received.replyTo?.value[0]?.address).toBe(designer.email);
    await maja.open("Your application to test", "Open your application");
    await expect(maja.page.getByText("Thank you: your application is sent")).toBeVisible();

    await signInByCookie(page.context(), designer);
    await offerSpots(page, server, callId);
    expect((await maja.mail("A spot to test")).text).toContain("size L");
    for (const tester of testers) await tester.accept();
    await maja.mail("You are testing");
    await page.reload();
    await expect(page.getByText(new RegExp(`Sent to ${maja.address} by e-mail on`))).toBeVisible();

    await maja.openTest("You are testing");
    await maja.page.goto(`${maja.page.url()}/pattern`);
    await maja.page.getByText("Cast on 98 (for your size: 118) stitches.").click();
    await maja.page.getByRole("link", { name: "Ask about this" }).click();
    await maja.page.getByLabel("Your question").fill("Long tail?");
    await maja.page.getByRole("button", { name: "Send question" }).click();
    await expect(maja.page.getByText("Your question is sent.")).toBeVisible();
    await page.goto(at(`/calls/${callId}/questions`));
    await page.getByLabel("Your answer").fill("Yes, or any other that stretches.");
    await page.getByRole("button", { name: "Send answer" }).click();
    const answer = await maja.mail("An answer about");
    expect(answer.text).toContain("> Long tail?");
    expect(answer.text).toContain("> Yes, or any other that stretches.");

    // Ola's start is today, and it is past eight where they are. A server that starts asks at once who is to be reminded.
    const [olas] = await query("SELECT tester_id FROM tester_contact WHERE email = $1", [ola.address]);
    await startToday(String(Object(olas).tester_id));
    await server.restart();
    await ola.openTest("starts today");
    await expect(ola.page.getByRole("heading", { name: "Make your swatch" })).toBeVisible();

    await publishCorrection(page, server, callId);
    await answerCorrection(maja, "Ripped back and changed it");
    await answerCorrection(noor, "Not there yet, will follow");
    await answerCorrection(ola, "Already past it, keeping the old");
    await answerCorrection(pia, "Not in my version");
    await page.reload();
    await expect(page.getByText("Ripped back and changed it: 1")).toBeVisible();
    await expect(page.getByText("No answer yet")).toBeHidden();

    await noor.openTest("A correction to");
    await report(noor);
    await noor.mail("Your report for");

    // Maja's link is lost: the designer sends it again.
    await page.goto(at(`/calls/${callId}/progress`));
    await page.getByRole("link", { name: maja.name }).click();
    await expect(page.getByText("Question answered", { exact: true })).toBeVisible();
    await page.getByText("They lost their link").click();
    await page.getByRole("button", { name: "Send it by e-mail" }).click();
    await maja.openTest("Your link to the test");

    // Pia has to stop: the designer learns of it at once.
    await pia.openTest("You are testing");
    await pia.page.getByText(/^I have to stop/).click();
    await pia.page.getByRole("button", { name: "Yes, I have to stop" }).click();
    const stopped = await mailTo(designer.email, "had to stop testing");
    await page.goto(linkIn(stopped, "Find a tester"));
    await expect(page.getByRole("heading", { name: /1 open spot in L|Sizes and testers/ }).first()).toBeVisible();

    await page.goto(at(`/calls/${callId}/thanks`));
    await page.getByRole("checkbox", { name: `Select ${noor.name}` }).check();
    await page.getByRole("button", { name: "Write to selected" }).click();
    await page.getByRole("button", { name: `Send to ${noor.name}` }).click();
    await expect(page.getByText(`Your message to ${noor.name} is on the way.`)).toBeVisible();

    await noor.openTest("Thank you for testing");
    await noor.page.getByRole("link", { name: /Photos/ }).click();
    await noor.page.getByRole("checkbox", { name: "On social media" }).uncheck();
    await noor.page.getByRole("button", { name: "Withdraw consent" }).click();
    await expect(noor.page.getByText("Saved.")).toBeVisible();
    await page.goto(at(`/calls/${callId}`));
    await page.getByRole("link", { name: "See what to take down" }).click();
    await expect(page.getByText(/no longer allows their photos on social media/).first()).toBeVisible();

    const ids = mail.taken.map(({ messageId }) => messageId);
    expect(new Set(ids).size).toBe(ids.length);
    for (const tester of testers) await tester.leave();
  } finally {
    await stop();
  }
});
