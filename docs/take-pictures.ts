import { chmodSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "playwright";
import { runServer } from "../e2e/running-server";
import { freePort } from "../src/start/free-port";
import { CHROMIUM_OPTIONS } from "../test/install-chromium";

/** Takes the README's pictures from the demo, as built: run it after npm run build. A folder may be named for them. */
const [into = "docs/pictures"] = process.argv.slice(2);
const DESK = { width: 1280, height: 960 };
const PHONE = { width: 360, height: 1900 };

const MEASUREMENTS = `Meadow jumper, invented
\tMeasurement (cm)\tXS\tS\tM\tL
\tTo fit bust\t76–81\t82–87\t88–93\t94–99
A\tBust around\t90,5\t96.5\tabc\t108
\tStitches at the bust\t76\t82\t86\t92
B\tUpper arm around\t31\t33 1/2\t36\t38`;

interface Demo {
  readonly pattern: string;
  readonly call: string;
}

type Shot = (page: Page, demo: Demo) => Promise<void>;

const path = (name: string) => join(into, `${name}.png`);

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForLoadState("networkidle");
  // A call is analysed once after a start.
  await page.getByText("Updating", { exact: false }).waitFor({ state: "hidden" });
}

/** A page as it is when opened: all of it, or the part that a screen shows. */
const opened =
  (name: string, address: (demo: Demo) => string, { fullPage = true } = {}): Shot =>
  async (page, demo) => {
    await open(page, address(demo));
    await page.screenshot({ path: path(name), fullPage });
  };

async function cell(page: Page, { call }: Demo): Promise<void> {
  await open(page, `${call}/differences`);
  await page.getByRole("link", { name: /^Bust, 2X/ }).click();
  const panel = page.locator("section", { has: page.locator("#cell-panel-title") }).last();
  await panel.screenshot({ path: path("cell") });
}

async function correct(page: Page, { call }: Demo): Promise<void> {
  await open(page, `${call}/differences`);
  await page.getByRole("link", { name: /^Neck width, M/ }).click();
  await page.locator(`a[href*="/correct?"]`).first().click();
  await page.getByLabel("Neck band", { exact: true }).fill("2.8");
  await page.getByRole("button", { name: "Show what changes" }).click();
  await page.getByRole("row", { name: /Neck width, M/ }).waitFor();
  await page.screenshot({
    path: path("correct"),
    clip: { x: 0, y: 0, width: DESK.width, height: 1500 },
    fullPage: true,
  });
}

async function grading(page: Page, { pattern }: Demo): Promise<void> {
  await open(page, `${pattern}/edit?part=grading`);
  await page.getByRole("button", { name: /^Calculate (unlocked numbers|all)$/ }).click();
  await page.getByRole("region", { name: "Calculated numbers" }).waitFor();
  await page.screenshot({ path: path("grading") });
}

async function paste(page: Page): Promise<void> {
  await open(page, "/patterns/new/paste");
  await page.getByRole("textbox", { name: "Your finished measurements" }).fill(MEASUREMENTS);
  await page.getByText("“abc” is not a number").first().waitFor();
  await page.screenshot({ path: path("paste"), fullPage: true });
}

async function gapsPhone(page: Page, { call }: Demo): Promise<void> {
  await page.setViewportSize(PHONE);
  await open(page, `${call}/differences`);
  await page.screenshot({ path: path("gaps-phone") });
}

const SHOTS: readonly Shot[] = [
  opened("gaps", ({ call }) => `${call}/differences`),
  cell,
  opened("changes", ({ call }) => `${call}/changes`),
  opened("yarn", ({ call }) => `${call}/yarn`),
  correct,
  grading,
  opened("pieces", ({ pattern }) => `${pattern}/pieces`, { fullPage: false }),
  paste,
  opened("pattern", ({ pattern }) => pattern, { fullPage: false }),
  gapsPhone,
];

async function hrefOf(page: Page, pattern: RegExp): Promise<string> {
  const hrefs = await page.locator("main a").evaluateAll((links) => links.map((link) => link.getAttribute("href")));
  const found = hrefs.map((href) => pattern.exec(href ?? "")?.[0]).find((href) => href !== undefined);
  if (found === undefined) throw new Error(`${page.url()} has no link to ${pattern}.`);
  return found;
}

async function signIn(page: Page): Promise<Demo> {
  await open(page, "/sign-in?next=%2Fpatterns");
  await page.getByRole("button", { name: "Sign in to the demo" }).click();
  await page.waitForURL(/\/patterns$/);
  const pattern = await hrefOf(page, /^\/patterns\/[0-9a-f-]{36}/);
  await open(page, pattern);
  const reported = await page.getByRole("link", { name: "Spring test" }).first().getAttribute("href");
  return { pattern, call: reported ?? "" };
}

async function takePictures(baseURL: string): Promise<void> {
  const browser = await chromium.launch(CHROMIUM_OPTIONS);
  try {
    const page = await browser.newPage({ baseURL, viewport: DESK, locale: "en-GB", timezoneId: "UTC" });
    const demo = await signIn(page);
    for (const shot of SHOTS) await shot(page, demo);
  } finally {
    await browser.close();
  }
}

const folder = mkdtempSync(join(tmpdir(), "sizewright-pictures-"));
chmodSync(folder, 0o755);
mkdirSync(into, { recursive: true });
try {
  const settings = { DATABASE_URL: "", PORT: String(await freePort()), SIZEWRIGHT_FOLDER: folder };
  const server = await runServer({ flags: ["--demo"], settings });
  try {
    await takePictures(server.address);
  } finally {
    await server.stop();
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
