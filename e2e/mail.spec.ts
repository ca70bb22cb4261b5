import { randomUUID } from "node:crypto";
import { patternDocument } from "../test/factories/pattern";
import { expectNoSidewaysScroll } from "./import-call";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { linkIn, startMailing } from "./mailed-journey";
import { makeOpenCall } from "./make-open-call";
import { violations } from "./violations";

const TEXT = "# Body\n\nCast on 98 (118) stitches.\n";

test("a tester applies, is offered a spot, accepts and gets an answer by the links in their mail alone", async ({
  page,
  browser,
  designer,
}) => {
  test.setTimeout(240_000);
  const { at, mail, mailTo, stop } = await startMailing();
  try {
    const callId = await makeOpenCall(designer);
    await query(
      `INSERT INTO revision (pattern_id, number, document, reason)
       SELECT pattern_id, 2, $2, 'Written' FROM call WHERE id = $1`,
      [callId, JSON.stringify(patternDocument({ instructions: TEXT }))],
    );
    const address = `${randomUUID()}@example.org`;
    const phone = await browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true });
    const tester = await phone.newPage();
    phone.setDefaultTimeout(30_000);

    await tester.goto(at(`/open-calls/${callId}/apply`));
    await tester.getByLabel("Name").fill("Maja 🧶");
    await tester.getByLabel("E-mail").fill(address);
    await tester.getByRole("textbox", { name: "Bust" }).fill("110");
    await tester.getByRole("checkbox", { name: /^L for bust/ }).check();
    await tester.getByLabel("First choice").selectOption({ label: "L" });
    await tester.getByRole("radio", { name: "I have tested a few patterns" }).check();
    await tester.getByRole("checkbox", { name: /^I have read the agreement/ }).check();
    await tester.getByRole("checkbox", { name: "I am 18 or over." }).check();
    await tester.getByRole("button", { name: "Send application" }).click();
    await expect(tester.getByText("Thank you: your application is sent")).toBeVisible();
    const received = await mailTo(address, "Your application to test");
    expect(received.replyTo?.value[0]?.address).toBe(designer.email);
    await phone.clearCookies();
    await tester.goto(linkIn(received, "Open your application"));
    await expect(tester.getByText("Thank you: your application is sent")).toBeVisible();

    // The mail server is away while the designer offers the spot.
    await mail.stop();
    await signInByCookie(page.context(), designer);
    await page.goto(at(`/calls/${callId}/applications`));
    await page
      .getByRole("group", { name: /Your decision on/ })
      .getByRole("button", { name: "Yes" })
      .click();
    await expect(page.getByText("1 applied: 1 yes.")).toBeVisible();
    await page.goto(at(`/calls/${callId}/sizes`));
    await page.getByRole("button", { name: "Assign sizes" }).click();
    await page.getByLabel("They can reply until the end of").fill("2089-01-01");
    await expect(page.getByText("Sizewright sends them the link by e-mail.")).toBeVisible();
    await page.getByRole("button", { name: "Invite 1 person" }).click();
    await expect(page.getByText("1 person is invited")).toBeVisible();
    await expect(async () => {
      await page.reload();
      await expect(page.getByText(/Not sent to .* yet. The mail server says: “connect ECONNREFUSED/)).toBeVisible({
        timeout: 1_000,
      });
    }).toPass();
    await page.getByText("Message to copy").click();
    await expect(page.getByLabel(/^Message for/)).toHaveValue(/\/invited\//);
    await expectNoSidewaysScroll(page);
    expect(await violations(page)).toEqual([]);
    await mail.start();

    const offered = await mailTo(address, "A spot to test");
    expect(offered.text).toContain("size L");
    await tester.goto(linkIn(offered, "Accept or decline"));
    await tester.getByRole("button", { name: "Accept" }).click();
    await expect(tester.getByRole("heading", { name: "Make your swatch" })).toBeVisible();
    const accepted = await mailTo(address, "You are testing");
    await page.reload();
    await expect(page.getByText(new RegExp(`Sent to ${address} by e-mail on`))).toBeVisible();

    // On another device, by the link of the newest mail.
    await phone.clearCookies();
    await tester.goto(linkIn(accepted, "Open your test"));
    await tester.getByRole("button", { name: "Open your test" }).click();
    await tester.waitForURL(/\/testing\//);
    await tester.goto(`${tester.url()}/pattern`);
    await tester.getByText("Cast on 98 (for your size: 118) stitches.").click();
    await tester.getByRole("link", { name: "Ask about this" }).click();
    await tester.getByLabel("Your question").fill("Long tail?");
    await tester.getByRole("button", { name: "Send question" }).click();
    await expect(tester.getByText("Your question is sent.")).toBeVisible();
    await page.goto(at(`/calls/${callId}/questions`));
    await page.getByLabel("Your answer").fill("Yes, or any other that stretches.");
    await page.getByRole("button", { name: "Send answer" }).click();
    const answer = await mailTo(address, "An answer about");
    expect(answer.text).toContain("> Long tail?");
    expect(answer.text).toContain("> Yes, or any other that stretches.");
    await tester.goto(linkIn(answer, "Open your test"));
    await tester.waitForURL(/\/testing\//);

    // Their link is lost: the designer sends it again.
    const [person] = await query("SELECT id FROM tester WHERE call_id = $1", [callId]);
    await page.goto(at(`/calls/${callId}/progress/${String(Object(person).id)}`));
    await expect(page.getByText("Question answered", { exact: true })).toBeVisible();
    await page.getByText("They lost their link").click();
    await page.getByRole("button", { name: "Send it by e-mail" }).click();
    const again = await mailTo(address, "Your link to the test");
    await phone.clearCookies();
    await tester.goto(linkIn(again, "Open your test"));
    await tester.getByRole("button", { name: "Open your test" }).click();
    await tester.waitForURL(/\/testing\//);

    // They have to stop: the designer learns of it at once.
    await tester.getByText(/^I have to stop/).click();
    await tester.getByRole("button", { name: "Yes, I have to stop" }).click();
    const stopped = await mailTo(designer.email, "had to stop testing");
    await page.goto(linkIn(stopped, "Find a tester"));
    await expect(page.getByRole("heading", { name: /1 open spot in L|Sizes and testers/ }).first()).toBeVisible();
    const ids = mail.taken.map(({ messageId }) => messageId);
    expect(new Set(ids).size).toBe(ids.length);
    await phone.close();
  } finally {
    await stop();
  }
});
