import { patternDocument } from "../test/factories/pattern";
import { expectNoSidewaysScroll } from "./import-call";
import { query } from "./designer";
import { expect, test } from "./fixtures";
import { letIn, makeTester } from "./make-tester";
import { violations } from "./violations";

const TEXT = "# Body\n\nCast on 98 (118) stitches.\n\nWork 100 (110) rows.\n";

/** Another tester of the same call, who makes the large size. */
async function anotherTester(testerId: string, callId: string): Promise<{ testerId: string; callId: string }> {
  await query(
    `INSERT INTO tester (id, call_id, code, position, size, revision_id, invited_at, invitation_expires_at, accepted_at)
     SELECT gen_random_uuid(), call_id, 'tester-2', 1, 'large', revision_id, now(), now() + interval '1 day', now()
     FROM tester WHERE id = $1`,
    [testerId],
  );
  const rows = await query("SELECT id FROM tester WHERE call_id = $1 AND position = 1", [callId]);
  return { testerId: String(Object(rows[0]).id), callId };
}

test("a question is asked about a passage, answered once, and read there by every tester", async ({
  browser,
  page,
  context,
  designer,
}) => {
  const asker = await makeTester(patternDocument({ instructions: TEXT }));
  const reader = await anotherTester(asker.testerId, asker.callId);
  await query(
    "INSERT INTO membership (pattern_id, account_id, role) SELECT pattern_id, $1, 'editor' FROM call WHERE id = $2",
    [designer.accountId, asker.callId],
  );
  await letIn(context, asker);
  await page.goto(`/testing/${asker.testerId}/pattern`);
  await expect(page.getByText("Cast on for your size: 98 (118) stitches.")).toBeVisible();
  await page.getByText("Cast on for your size: 98 (118) stitches.").click();
  const passage = page.getByRole("group", { name: /^At “/ });
  await passage.getByRole("link", { name: "Ask about this" }).click();
  await page.getByLabel("Your question").fill("למה? 🧶");
  await page.getByRole("button", { name: "Send question" }).click();
  await expect(page.getByText("Your question is sent.")).toBeVisible();
  await page.getByText("Work for your size: 100 (110) rows.").click();
  await expect(passage).toHaveCount(1);
  await passage.getByRole("link", { name: "Something went wrong here" }).click();
  await page.getByRole("button", { name: "Send to the designer" }).click();
  await expect(page.getByText("Say in a few words what went wrong here.")).toBeVisible();
  await page.getByLabel("What happened here").fill("Two rows too many");
  await page.getByRole("button", { name: "Send to the designer" }).click();
  await expect(page.getByText("Sent to the designer.")).toBeVisible();
  await expectNoSidewaysScroll(page);
  expect(await violations(page)).toEqual([]);

  await page.goto(`/calls/${asker.callId}/questions`);
  await expect(page.getByRole("heading", { name: "Waiting for an answer: 1" })).toBeVisible();
  await page.getByLabel("Your answer").fill("So that it is wide enough.");
  await page.getByRole("button", { name: "Send answer" }).click();
  await expect(page.getByRole("heading", { name: "No open questions" })).toBeVisible();
  await expect(page.getByText("1 tester had a problem here in S")).toBeVisible();

  // Without scripts, and nobody's name.
  const phone = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, javaScriptEnabled: false });
  await letIn(phone, reader);
  const other = await phone.newPage();
  await other.goto(`/testing/${reader.testerId}/pattern`);
  await expect(other.getByText("Cast on 98 (for your size: 118) stitches.")).toBeVisible();
  await expect(other.getByText("So that it is wide enough.")).toBeVisible();
  await expect(other.getByText("Two rows too many")).toBeHidden();
  await expect(other.getByText("tester-1")).toBeHidden();
  await other.getByText("List of passages").click();
  await other.getByLabel("Passage").selectOption({ label: "Work 100 (110) rows." });
  await other.getByRole("button", { name: "Ask about this passage" }).click();
  await other.getByLabel("Your question").fill("Right side first?");
  await other.getByRole("button", { name: "Send question" }).click();
  await expect(other.getByText("Right side first?", { exact: true })).toBeVisible();
  await other.getByRole("button", { name: "Only my size" }).click();
  await expect(other.getByText("Cast on for your size: 118 stitches.")).toBeVisible();
  await phone.close();
});
