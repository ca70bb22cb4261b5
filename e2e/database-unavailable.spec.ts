import { randomUUID } from "node:crypto";
import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { freePort } from "../src/start/free-port";
import { startOwnPostgres } from "../src/start/own-postgres";
import { expect, test } from "./fixtures";
import { runServer } from "./running-server";

test.use({ expectedErrors: /status of (500|503)|React error #441/ });

test("a database that is away is told plainly, loses nothing, and is found again", async ({ page }) => {
  test.setTimeout(180_000);
  const folder = mkdtempSync(join(tmpdir(), "sizewright-away-"));
  chmodSync(folder, 0o755);
  let postgres = await startOwnPostgres({ folder });
  const settings = { DATABASE_URL: postgres.url, PORT: String(await freePort()), SIZEWRIGHT_FOLDER: folder };
  const server = await runServer({ settings });
  try {
    const at = (path: string) => `${server.address}${path}`;
    await page.goto(at("/sign-up"));
    await page.getByLabel("Name").fill("Invented Designer");
    await page.getByLabel("E-mail").fill("away@example.org");
    await page.getByLabel("Password", { exact: true }).fill("a long enough password");
    await page.getByRole("button", { name: "Create account" }).click();
    await expect(page.getByRole("link", { name: "Your account" })).toBeVisible();
    await page.goto(at("/account"));
    await page.getByLabel("Name").fill("Typed while it was away");

    await postgres.stop();
    await page.getByRole("button", { name: "Save" }).click();
    await expect(page.getByText("What you typed is still on this page")).toBeVisible();
    await expect(page.getByLabel("Name")).toHaveValue("Typed while it was away");
    expect((await page.request.get(at("/ready"))).status()).toBe(503);
    expect((await page.request.get(at("/live"))).status()).toBe(200);
    for (const path of ["/account", "/patterns", `/calls/${randomUUID()}/differences`, `/open-calls/${randomUUID()}`]) {
      const answer = await page.request.get(at(path));
      expect([path, answer.status(), answer.headers()["retry-after"]]).toEqual([path, 503, "5"]);
      // Plain words, for whoever has no scripts.
      expect(await answer.text()).toContain("<h1>The database is not responding</h1>");
    }
    const second = await page.context().newPage();
    await second.goto(at("/account"));
    await expect(second.getByRole("heading", { name: "The database is not responding" })).toBeVisible();

    postgres = await startOwnPostgres({ folder });
    await second.getByRole("link", { name: "Try again" }).click();
    await expect(second.getByRole("heading", { name: "Your account" })).toBeVisible();
    await page.getByRole("button", { name: "Save" }).click();
    await expect(page.getByText("Saved.")).toBeVisible();
    await page.reload();
    await expect(page.getByLabel("Name")).toHaveValue("Typed while it was away");
    expect((await page.request.get(at("/ready"))).status()).toBe(200);
  } finally {
    await server.stop();
    await postgres.stop();
    rmSync(folder, { recursive: true, force: true });
  }
});
