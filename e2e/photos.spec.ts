import sharp from "sharp";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester } from "./make-tester";

// The first sending is cut off on purpose, and a text is no photo.
test.use({ expectedErrors: /Failed to load resource.*\/photos\/send/ });

function photo(background: string): Promise<Buffer> {
  return sharp({ create: { width: 1200, height: 1600, channels: 3, background } })
    .jpeg()
    .toBuffer();
}

test("a tester sends photos over a bad line, allows a use and withdraws it; the designer sees both", async ({
  page,
  context,
}) => {
  test.setTimeout(120_000);
  const tester = await makeTester(saltmarshPattern, { size: "size-m" });
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await page.getByRole("link", { name: /Photos/ }).click();
  await page.getByRole("button", { name: "Send photos" }).click();
  await expect(page.getByText("Choose at least one photo first.")).toBeVisible();
  let cutOff = 0;
  await page.route("**/photos/send?*", async (route) => {
    cutOff += 1;
    if (cutOff > 1) return await route.continue();
    // The server has it, and the answer is lost.
    await route.fetch();
    await route.abort("connectionreset");
  });
  await page.getByLabel("Photos", { exact: true }).setInputFiles([
    { name: "front.jpg", mimeType: "image/jpeg", buffer: await photo("#a33") },
    { name: "front again.jpg", mimeType: "image/jpeg", buffer: await photo("#3a3") },
    { name: "soup.jpg", mimeType: "image/jpeg", buffer: Buffer.from("A recipe for soup") },
  ]);
  await page.getByRole("button", { name: "Send photos" }).click();
  await expect(page.getByText("3 of up to 24")).toBeVisible();
  const own = page.getByRole("list", { name: "Your photos" });
  await expect(own.getByRole("img", { name: "Your photo: Front" })).toHaveCount(2);
  await expect(own.getByText(/not a photo that can be read here/)).toBeVisible();
  await own.getByRole("button", { name: /photo 3, Front/ }).click();
  await expect(page.getByText("2 of up to 24")).toBeVisible();
  const social = page.getByRole("checkbox", { name: "On social media" });
  await expect(social).not.toBeChecked();
  await social.check();
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await expectNoSidewaysScroll(page);
  await page.screenshot({ path: `test-results/photos-tester-${test.info().project.name}.png`, fullPage: true });

  const desk = await context.browser()?.newContext({ baseURL: String(process.env.NEXTAUTH_URL) });
  if (desk === undefined) throw new Error("no browser");
  await signInByCookie(desk, tester.designer);
  const sheet = await desk.newPage();
  await sheet.goto(`/calls/${tester.callId}/photos`);
  await expect(sheet.getByRole("list", { name: /Photos of size/ }).getByRole("listitem")).toHaveCount(2);
  await expect(sheet.getByText("May be shown on social media, without a name").first()).toBeVisible();
  await sheet.getByRole("link", { name: "Back", exact: true }).click();
  await expect(sheet.getByText("No photos match.")).toBeVisible();

  await social.uncheck();
  await expect(page.getByText(/You are withdrawing your consent/)).toBeVisible();
  await page.getByRole("button", { name: "Withdraw consent" }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await sheet.goto(`/calls/${tester.callId}`);
  await sheet.getByRole("link", { name: "See what to take down" }).click();
  await expect(sheet.getByText(/no longer allows their photos on social media/).first()).toBeVisible();
  await expect(sheet.getByText("For your eyes only")).toHaveCount(2);
  await sheet.screenshot({ path: `test-results/photos-designer-${test.info().project.name}.png`, fullPage: true });
  await sheet.getByRole("button", { name: /^Done/ }).click();
  await expect(sheet.getByRole("region", { name: "Take down" })).toHaveCount(0);
  await desk.close();
});
