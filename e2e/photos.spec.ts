import sharp from "sharp";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { patternDocument } from "../test/factories/pattern";
import { signInByCookie } from "./designer";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { letIn, makeTester } from "./make-tester";
import { violations } from "./violations";

// The first sending is cut off on purpose, and a text is no photo.
test.use({ expectedErrors: /Failed to load resource.*\/photos\/send/ });

function photo(background: string): Promise<Buffer> {
  return sharp({ create: { width: 1200, height: 1600, channels: 3, background } })
    .jpeg()
    .toBuffer();
}

/** Black and white in turn, of which nothing is left in a part that is blurred. */
function stripes(): Promise<Buffer> {
  const raw = { width: 1200, height: 1600, channels: 1 } as const;
  const bytes = Buffer.alloc(raw.width * raw.height, 0).map((_, index) => ((index % raw.width) % 40 < 20 ? 0 : 255));
  return sharp(bytes, { raw }).jpeg().toBuffer();
}

/** How much the lightness varies in a part of a photo. */
async function contrast(photo: Buffer, left: number, top: number): Promise<number> {
  const part = await sharp(photo).extract({ left, top, width: 100, height: 100 }).png().toBuffer();
  return (await sharp(part).stats()).channels[0]?.stdev ?? 0;
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
    { name: "stripes.jpg", mimeType: "image/jpeg", buffer: await stripes() },
    { name: "soup.jpg", mimeType: "image/jpeg", buffer: Buffer.from("A recipe for soup") },
  ]);
  await page.getByRole("button", { name: "Crop or blur front.jpg" }).click();
  // The selection is 480 by 480 pixels, wherever it is moved to.
  await page.getByRole("group", { name: /^Selection/ }).press("ArrowRight");
  await page.getByRole("button", { name: "Crop to selection" }).click();
  await page.getByRole("button", { name: "Use changed photo" }).click();
  await page.getByRole("button", { name: "Crop or blur stripes.jpg" }).click();
  await page.getByRole("button", { name: "Blur selection" }).click();
  await expectNoSidewaysScroll(page);
  await page.getByRole("button", { name: "Use changed photo" }).click();
  const chosen = page.getByRole("list", { name: "Photos to send" });
  await expect(chosen.getByText("changed")).toHaveCount(2);
  await page.getByRole("button", { name: "Crop or blur soup.jpg" }).click();
  await expect(page.getByText("This photo can’t be opened here.")).toBeVisible();
  await page.getByRole("button", { name: "Close" }).click();
  await page.getByRole("button", { name: "Send photos" }).click();
  await expect(page.getByText("3 of up to 24")).toBeVisible();
  const own = page.getByRole("list", { name: "Your photos" });
  await expect(own.getByRole("img", { name: "Your photo: Front" })).toHaveCount(2);
  await expect(own.getByText(/not a photo that can be read here/)).toBeVisible();
  const address = (index: number) => own.getByRole("link").nth(index).getAttribute("href");
  const sent = await Promise.all(
    [0, 1].map(async (index) => (await page.request.get((await address(index)) ?? "")).body()),
  );
  const [cropped, blurred] = await Promise.all(sent.map((each) => sharp(each).metadata()));
  expect([cropped?.width, cropped?.height, blurred?.width]).toEqual([480, 480, 1200]);
  expect(await contrast(sent[1] ?? Buffer.alloc(0), 550, 300)).toBeLessThan(40);
  expect(await contrast(sent[1] ?? Buffer.alloc(0), 550, 1200)).toBeGreaterThan(100);
  await own.getByRole("button", { name: /photo 3, Front/ }).click();
  await expect(page.getByText("2 of up to 24")).toBeVisible();
  const social = page.getByRole("checkbox", { name: "On social media" });
  await expect(social).not.toBeChecked();
  await social.check();
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await expectNoSidewaysScroll(page);

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
  await sheet.getByRole("button", { name: /^Done/ }).click();
  await expect(sheet.getByRole("region", { name: "Take down" })).toHaveCount(0);
  await desk.close();
});

test("a tester adds a photo at their trouble spot, with and without scripts, and the designer sees it there", async ({
  browser,
  page,
  context,
}) => {
  test.setTimeout(120_000);
  const tester = await makeTester(
    patternDocument({ instructions: "Cast on 98 (118) stitches.\n\nWork 100 (110) rows." }),
  );
  const viewport = { width: 360, height: 740 };
  const phone = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, viewport });
  await letIn(phone, tester);
  const own = await phone.newPage();
  await own.goto(`/testing/${tester.testerId}/pattern`);
  await expect(own.getByText("Add a photo")).toHaveCount(0);
  await own.getByText("Cast on for your size: 98 (118) stitches.").click();
  await own.getByRole("link", { name: "Something went wrong here" }).click();
  await own.getByLabel("What happened here").fill("The edge curls");
  await own.getByRole("button", { name: "Send to the designer" }).click();
  await expect(own.getByText("Sent to the designer.")).toBeVisible();
  await own.getByRole("link", { name: /^Add a photo ?: The edge curls$/ }).click();
  await own.getByRole("button", { name: "Send photos" }).click();
  await expect(own.getByText("Choose at least one photo first.")).toBeVisible();
  expect(await violations(own)).toEqual([]);
  await expectNoSidewaysScroll(own);
  const file = async (name: string) => ({ name, mimeType: "image/jpeg", buffer: await photo("#a33") });
  await own.getByLabel("Photos", { exact: true }).setInputFiles([await file("edge.jpg")]);
  await own.getByRole("button", { name: "Send photos" }).click();
  const here = own.getByRole("list", { name: "Your photos of this problem" });
  await expect(here.getByRole("img", { name: "Your photo: Problem" })).toBeVisible();
  await own.getByRole("link", { name: /^Close ?: The edge curls$/ }).click();
  await expect(own.getByRole("button", { name: "Send photos" })).toHaveCount(0);
  await phone.close();

  const plain = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL, viewport, javaScriptEnabled: false });
  await letIn(plain, tester);
  const still = await plain.newPage();
  await still.goto(`/testing/${tester.testerId}/pattern`);
  await still.getByRole("link", { name: /^Add a photo ?: The edge curls$/ }).click();
  await still.getByLabel("Photos", { exact: true }).setInputFiles([await file("again.jpg")]);
  await still.getByRole("button", { name: "Send photos" }).click();
  await expect(still.getByRole("heading", { name: "Photos", exact: true })).toBeVisible();
  await expect(still.getByRole("list", { name: "Your photos" }).getByText("The edge curls")).toHaveCount(2);
  await plain.close();

  await signInByCookie(context, tester.designer);
  const spot = page.getByRole("listitem").filter({ hasText: "1 tester had a problem here" });
  // Without scripts nobody waits until a photo is made smaller: whoever opens the page in that moment looks again.
  await expect(async () => {
    await page.goto(`/calls/${tester.callId}/questions`);
    await expect(spot.getByRole("img", { name: "Problem, by tester-1" })).toHaveCount(2, { timeout: 2_000 });
  }).toPass();
  await expectNoSidewaysScroll(page);
});
