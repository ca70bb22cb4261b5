import { chmodSync, existsSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { z } from "zod";
import { freePort } from "../src/start/free-port";
import { expect, test } from "./fixtures";
import { runServer } from "./running-server";

const manifestSchema = z.object({ icons: z.array(z.object({ src: z.string() })).min(2) });

let folder: string;

test.beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sizewright-start-"));
  chmodSync(folder, 0o755);
});

test.afterEach(() => rmSync(folder, { recursive: true, force: true }));

test("the demo starts with nothing but its build, signs in by one button, and stops cleanly", async ({ page }) => {
  test.setTimeout(180_000);
  const settings = { DATABASE_URL: "", PORT: String(await freePort()), SIZEWRIGHT_FOLDER: folder };
  const server = await runServer({ flags: ["--demo"], settings });
  expect(existsSync(join(folder, "database-url"))).toBe(true);
  expect(statSync(join(folder, "secret")).mode & 0o777).toBe(0o600);

  const again = runServer({ settings: { ...settings, PORT: String(await freePort()) } });
  await expect(again).rejects.toThrow("Sizewright is already running with the data in");

  await page.goto(`${server.address}/sign-in`);
  await page.getByRole("button", { name: "See it as a tester" }).click();
  await expect(page.getByText("Size M", { exact: false }).first()).toBeVisible();
  await expect(page).toHaveURL(/\/testing\//);

  await page.goto(`${server.address}/sign-in?next=%2Faccount`);
  await page.getByRole("button", { name: "Sign in to the demo" }).click();
  await expect(page.getByRole("heading", { name: "Your account" })).toBeVisible();

  await page.goto("about:blank");
  expect(await server.stop()).toBe(0);
  expect(existsSync(join(folder, "database-url"))).toBe(false);
});

test("a port that is taken is told in a sentence", async ({ baseURL }) => {
  const port = new URL(String(baseURL)).port;
  const second = runServer({ settings: { DATABASE_URL: "", PORT: port, SIZEWRIGHT_FOLDER: folder } });
  await expect(second).rejects.toThrow(`Port ${port} is already in use. Choose another one with PORT.`);
});

test("a request has an id, and no page can be framed", async ({ request }) => {
  const answer = await request.get("/sign-in", {
    headers: { "X-Request-Id": "made up", "X-Sizewright-Address": "made up" },
  });
  const headers = answer.headers();
  expect(headers["x-request-id"]).toMatch(/^[0-9a-f-]{36}$/);
  expect(headers["content-security-policy"]).toContain("frame-ancestors 'none'");
  expect(headers["x-content-type-options"]).toBe("nosniff");
});

test("the site has its own icons, a manifest, and keeps private pages out of search engines", async ({ page }) => {
  await page.goto("/sign-in");
  const named = page.locator('head link[rel="icon"], head link[rel="apple-touch-icon"], head link[rel="manifest"]');
  const hrefs = await named.evaluateAll((links) => links.map((link) => link.getAttribute("href")));
  expect(hrefs).toEqual(
    expect.arrayContaining(["/favicon.ico", "/icon.svg", "/apple-touch-icon.png", "/site.webmanifest"]),
  );
  const { icons } = manifestSchema.parse(await (await page.request.get("/site.webmanifest")).json());
  for (const path of [...hrefs.map(String), ...icons.map(({ src }) => src), "/robots.txt"]) {
    const answer = await page.request.get(path);
    expect([path, answer.status()]).toEqual([path, 200]);
    expect(answer.headers()["x-content-type-options"]).toBe("nosniff");
  }
  const rules = (await (await page.request.get("/robots.txt")).text()).split("\n");
  expect(rules).toEqual(expect.arrayContaining(["Disallow: /", "Allow: /open-calls/"]));
});

test("the demo's sign-in stands nowhere but in the demo", async ({ page }) => {
  await page.goto("/sign-in");
  await expect(page.getByRole("heading", { name: "Sign in" })).toBeVisible();
  await expect(page.getByText("demo")).toHaveCount(0);
});
