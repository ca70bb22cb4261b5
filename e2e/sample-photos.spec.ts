import sharp from "sharp";
import { z } from "zod";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { makeOpenCall, publishListing } from "./make-open-call";
import { query } from "./designer";

// Nobody sees a photo before its call is published.
test.use({ expectedErrors: /Failed to load resource/ });

async function photo(name: string, background: string) {
  const picture = sharp({ create: { width: 900, height: 1200, channels: 3, background } });
  return { name, mimeType: "image/jpeg", buffer: await picture.jpeg().toBuffer() };
}

test("a designer’s sample stands on the pattern’s card, the call’s page and its preview, once it is published", async ({
  page,
  designer,
  browser,
}) => {
  test.setTimeout(120_000);
  const callId = await makeOpenCall(designer);
  await query("DELETE FROM listing WHERE call_id = $1", [callId]);
  await query("DELETE FROM agreement WHERE call_id = $1", [callId]);
  const [row] = await query("SELECT pattern_id FROM call WHERE id = $1", [callId]);
  const photos = `/patterns/${z.object({ pattern_id: z.uuid() }).parse(row).pattern_id}/photos`;
  await page.goto(photos);
  await page
    .getByLabel("Photos", { exact: true })
    .setInputFiles([await photo("a.jpg", "#a33"), await photo("b.jpg", "#36a")]);
  await page.getByRole("button", { name: "Send photos" }).click();
  const sample = page.getByRole("list", { name: "Photos of your sample" });
  await expect(sample.getByRole("img")).toHaveCount(2);

  // Without scripts, too.
  const plain = await browser.newContext({
    baseURL: process.env.NEXTAUTH_URL,
    javaScriptEnabled: false,
    storageState: await page.context().storageState(),
  });
  const form = await plain.newPage();
  await form.goto(photos);
  await form.getByLabel("Swatch").check();
  await form
    .getByLabel("Photos", { exact: true })
    .setInputFiles([await photo("c.jpg", "#3a3"), await photo("d.jpg", "#dd3")]);
  await form.getByRole("button", { name: "Send photos" }).click();
  await expect(form).toHaveURL(photos);
  await expect(form.getByText("4 of up to 24")).toBeVisible();
  await plain.close();

  await page.reload();
  await expect(sample.getByRole("img")).toHaveCount(4);
  const second = sample.getByRole("listitem").nth(1);
  await second.getByLabel("Description for people who can’t see it").fill("A blue tee, laid flat");
  await second.getByRole("button", { name: "Save description" }).click();
  await expect(sample.getByRole("img", { name: "A blue tee, laid flat" })).toBeVisible();
  await second.getByRole("button", { name: /Make main photo/ }).click();
  const first = sample.getByRole("listitem").first();
  await expect(first.getByRole("img", { name: "A blue tee, laid flat" })).toBeVisible();
  await expect(first).toContainText("main photo");
  await expectNoSidewaysScroll(page);
  const address = (await first.getByRole("link").getAttribute("href")) ?? "";

  await page.goto("/patterns");
  await expect(page.getByRole("img", { name: "A blue tee, laid flat" })).toBeVisible();

  const stranger = await browser.newContext({ baseURL: process.env.NEXTAUTH_URL });
  expect((await stranger.request.get(address)).status()).toBe(404);
  await publishListing(callId);
  expect((await stranger.request.get(address)).status()).toBe(200);
  const reader = await stranger.newPage();
  await reader.goto(`/open-calls/${callId}`);
  await expect(reader.getByRole("main").getByRole("img").first()).toHaveAccessibleName("A blue tee, laid flat");
  await expect(reader.getByRole("list", { name: "More photos" }).getByRole("img")).toHaveCount(3);
  const preview = await reader.locator('meta[property="og:image"]').getAttribute("content");
  const drawn = sharp(await (await stranger.request.get(preview ?? "")).body());
  const beside = await drawn.extract({ left: 900, top: 300, width: 1, height: 1 }).raw().toBuffer();
  expect(beside[2]).toBeGreaterThan(beside[0] ?? 255);
  await stranger.close();
});
