import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright";
import { z } from "zod";
import { seed, startServer } from "./bench-server";
import { EDITOR_SIZES } from "./editor-garment";
import type { KeyTimes } from "./key-times";
import { launchBrowser, timeTyping } from "./type-in-editor";

const COUNTS = 60;
const NUMBERS = 40;
const PIECE_NUMBERS = 20;
const FIGURES = "test/figures";
const BARS = { cell: { median: 16, high: 33 }, derived: { median: 100, high: 100 } } as const;

const laidSchema = z.object({ path: z.string(), session: z.string() });

/** From a key in the editor to its digit, and to all that follows from it, in a real browser on the production build. */
export async function editorBench(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-bench-"));
  chmodSync(folder, 0o755);
  const server = await startServer(folder);
  let text: string;
  try {
    text = await timeEditor(folder, server.address);
  } finally {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
  mkdirSync(FIGURES, { recursive: true });
  writeFileSync(`${FIGURES}/bench-editor.txt`, text);
  return text;
}

async function timeEditor(folder: string, address: string): Promise<string> {
  const { path, session } = laidSchema.parse(await seed({ folder, address, script: "prisma/seed-editor-pattern.ts" }));
  const browser = await launchBrowser();
  try {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, locale: "en-GB" });
    await context.addCookies([{ name: "next-auth.session-token", value: session, url: address }]);
    const page = await context.newPage();
    await page.goto(`${address}${path}`);
    await page.getByRole("link", { name: "Edit", exact: true }).click();
    await page.getByRole("region", { name: "Numbers of every count" }).waitFor();
    await page.waitForLoadState("networkidle");
    const grading = await timeGrading(page);
    await page.getByRole("navigation", { name: "Parts of the pattern" }).getByRole("link", { name: "Pieces" }).click();
    const pieces = await timePieces(page);
    return [
      `The editor with ${EDITOR_SIZES} sizes × 60 counts, 38 measurements and 12 pieces, production build, headless Chromium ${browser.version()}, digits typed at a person's pace, autosaves among them.`,
      "From the browser's trace: from the moment at which it receives the key to the commit of the frame that shows the digit, or the last change that follows from it.",
      ...rows("grading", "measurements and drawing", grading),
      ...rows("pieces", "drawing and shaping", pieces),
      "",
    ].join("\n");
  } finally {
    await browser.close();
  }
}

/** Numbers near those that stand there, in cells all over the table, beside which the measurements and the drawing stand. */
async function timeGrading(page: Page): Promise<KeyTimes> {
  const table = page.getByRole("region", { name: "Numbers of every count" });
  await table.getByRole("textbox").first().focus();
  const derived = page.getByRole("complementary", { name: /^Measurements in/ });
  const fields = Array.from({ length: NUMBERS }, (_, index) => {
    const row = (index * 17) % COUNTS;
    const cell = table.locator(`[data-row="${row}"][data-column="${(index * 7) % EDITOR_SIZES}"]`);
    return {
      within: [table.locator("tbody tr").nth(row), cell],
      field: cell.getByRole("textbox"),
      digits: String(100 + ((index * 53) % 200)),
    };
  });
  return await timeTyping(page, { fields, derived });
}

async function timePieces(page: Page): Promise<KeyTimes> {
  await page.getByRole("button", { name: /^Piece 3/ }).click();
  const card = page.getByRole("listitem").filter({ has: page.getByRole("heading", { level: 3, name: /^Piece 3/ }) });
  await card.getByRole("button", { name: /^2\. / }).click();
  const fields = Array.from({ length: PIECE_NUMBERS }, (_, index) => ({
    field: card.getByRole("textbox", { name: "Stitches at a time: number" }),
    digits: String(1 + ((index + 1) % 3)),
  }));
  return await timeTyping(page, { fields, derived: card.getByRole("region", { name: "How it is worked" }) });
}

function rows(part: string, derived: string, { cellMs, busyMs, derivedMs }: KeyTimes): string[] {
  const [median, high] = [0.5, 0.95].map((share) => shown(quantile(busyMs, share)));
  return [
    row(`${part}, ${cellMs.length} digits: key to cell`, cellMs, BARS.cell),
    `  of it the page's own processor time: median ${median}, 95 % within ${high}`,
    row(`${part}, ${derivedMs.length} digits: key to ${derived}`, derivedMs, BARS.derived),
  ];
}

function row(name: string, times: readonly number[], bar: { readonly median: number; readonly high: number }): string {
  const [median, high] = [quantile(times, 0.5), quantile(times, 0.95)];
  const isMet = median <= bar.median && high <= bar.high;
  return `${name.padEnd(58)} median ${shown(median)} (bar ${bar.median} ms), 95 % within ${shown(high)} (bar ${bar.high} ms): ${isMet ? "met" : "missed"}`;
}

function quantile(times: readonly number[], share: number): number {
  const sorted = times.toSorted((left, right) => left - right);
  return sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN;
}

function shown(ms: number): string {
  return Number.isFinite(ms) ? `${ms.toFixed(1)} ms` : "never";
}
