import { randomUUID } from "node:crypto";
import { recipientsOf } from "../test/database/mail-server";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { query, signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { linkIn, startMailing } from "./mailed-journey";
import { makeTester } from "./make-tester";
import { violations } from "./violations";

const NAME = "Rosalind Invented-Featherstonehaugh";

async function testerWithAddress() {
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  const address = `${randomUUID()}@example.org`;
  await query("INSERT INTO tester_contact (tester_id, name, email) VALUES ($1, $2, $3)", [
    tester.testerId,
    NAME,
    address,
  ]);
  return { ...tester, address };
}

test("a designer writes to testers, sees what each will read, and it comes by mail with the way to their test", async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  const { at, mailTo, mail, stop } = await startMailing();
  try {
    const tester = await testerWithAddress();
    await signInByCookie(context, tester.designer);
    await page.goto(at(`/calls/${tester.callId}`));
    await page.getByRole("link", { name: "Testers", exact: true }).click();
    await page.getByRole("link", { name: "Progress" }).click();
    await page.getByRole("button", { name: "Write to selected" }).click();
    await expect(page.getByText("Nobody selected")).toBeVisible();
    await page.getByRole("link", { name: "all testers" }).click();
    await page.getByRole("link", { name: "Write to everyone testing" }).click();
    await expect(page.getByRole("heading", { name: "To 1 tester" })).toBeVisible();
    await page.getByRole("link", { name: "Nothing" }).click();
    await expect(page.getByRole("textbox", { name: "Message" })).toHaveValue("");
    await page.getByRole("button", { name: `Send to ${NAME}` }).click();
    await expect(page.getByText("Enter a subject.")).toBeVisible();
    await expect(page.getByText("Write your message.")).toBeVisible();
    await page.getByLabel("Subject").fill("A change of plan, [name]");
    await page.getByRole("textbox", { name: "Message" }).fill("Size [size] has a new hem, [nmae].\n\nTake your time.");
    await expect(page.getByText(`A change of plan, ${NAME}`)).toBeVisible();
    await page.getByRole("button", { name: `Send to ${NAME}` }).click();
    await expect(page.getByText("Nothing can be filled in for “[nmae]”.")).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.reload();
    await expect(page.getByRole("textbox", { name: "Message" })).toHaveValue(/\[nmae\]/);
    await page.getByRole("textbox", { name: "Message" }).fill("Size [size] has a new hem.\n\nTake your time.");
    await expectNoSidewaysScroll(page);
    await page.getByRole("button", { name: `Send to ${NAME}` }).click();
    await expect(page.getByText(`Your message to ${NAME} is on the way.`)).toBeVisible();

    const got = await mailTo(tester.address, "A change of plan");
    expect(got.subject).toBe(`A change of plan, ${NAME}`);
    expect(got.text).toContain("Size M has a new hem.\n\nTake your time.");
    expect(got.replyTo?.value[0]?.address).toBe(tester.designer.email);
    expect(linkIn(got, "Open your test")).toContain("/invited/");
    await page.getByRole("link", { name: "all testers" }).click();
    await page.getByRole("link", { name: NAME }).click();
    await expect(page.getByText("What you wrote · Sent to")).toBeVisible();
    expect(mail.taken.filter((each) => recipientsOf(each).includes(tester.address))).toHaveLength(1);
  } finally {
    await stop();
  }
});

test("a designer words the offer of a spot themselves, sees it as a tester gets it, and it comes so by mail", async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  const { at, mailTo, stop } = await startMailing();
  try {
    const tester = await testerWithAddress();
    await signInByCookie(context, tester.designer);
    await page.goto(at(`/calls/${tester.callId}`));
    await page.getByRole("link", { name: "Set up", exact: true }).click();
    await page.getByRole("link", { name: "Messages", exact: true }).click();
    await page.getByRole("link", { name: "Spot offered" }).click();
    await expect(page.getByText("To people you invite, when you invite them")).toBeVisible();
    await page.getByLabel("Subject").fill("Come and test, [name]");
    await page.getByRole("textbox", { name: "Message" }).fill("Size [size] is yours, [name].");
    await page.getByLabel("Your note").fill("I am away on Sunday.");
    await expect(page.getByText(`Come and test, ${NAME}`)).toBeVisible();
    await expect(page.getByText(`Size M is yours, ${NAME}.`)).toBeVisible();
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.getByRole("link", { name: "all messages" }).click();
    await expect(page.getByText("In your words, with your note")).toBeVisible();

    const address = `${randomUUID()}@example.org`;
    await page.getByRole("link", { name: "Testers", exact: true }).click();
    await page.getByRole("link", { name: "Progress" }).click();
    await page.getByRole("link", { name: "Invite someone by hand" }).click();
    await page.getByLabel("Name").fill("Nils Invented");
    await page.getByLabel("E-mail").fill(address);
    await page.getByLabel("Size", { exact: true }).selectOption({ label: "M" });
    await page.getByRole("button", { name: "Add tester" }).click();
    const offer = await mailTo(address, "Come and test");
    expect(offer.subject).toBe("Come and test, Nils Invented");
    expect(offer.text).toContain("Size M is yours, Nils Invented.\n\nI am away on Sunday.");
    await page.goto(linkIn(offer, "Accept or decline"));
    await expect(page.getByRole("main")).toContainText("invites you to test");
  } finally {
    await stop();
  }
});

test("without mail, the same message is there to copy, and thanks begin with what was promised", async ({
  page,
  context,
}) => {
  const tester = await testerWithAddress();
  await query("UPDATE tester SET reported_at = now() WHERE id = $1", [tester.testerId]);
  await signInByCookie(context, tester.designer);
  await page.goto(`/calls/${tester.callId}`);
  await page.getByRole("link", { name: "Testers", exact: true }).click();
  await page.getByRole("link", { name: "Thanks" }).click();
  await page.getByRole("checkbox", { name: `Select ${NAME}` }).check();
  await page.getByRole("button", { name: "Write to selected" }).click();
  await expect(page.getByRole("heading", { name: "Write to testers" })).toBeVisible();
  await expect(page.getByRole("textbox", { name: "Message" })).toHaveValue(/^Hello,\n\nThank you for testing “/);
  await expect(page.getByLabel("Addresses")).toHaveValue(tester.address);
  await page.getByRole("link", { name: "The finished pattern" }).click();
  await expect(page.getByRole("textbox", { name: "Message" })).toHaveValue(/\[your link to it\]/);
  await expectNoSidewaysScroll(page);
});
