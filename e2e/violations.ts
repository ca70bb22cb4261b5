import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, type Page } from "@playwright/test";
import type axe from "axe-core";

declare global {
  interface Window {
    /** There once its source has been read in the page. */
    readonly axe: typeof axe;
  }
}

const AXE_SOURCE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
/**
 * Each broken rule with the elements that break it. Asked of axe itself: its builder for Playwright reads the source anew
 * and opens a page for every answer, which takes longer than the rules do. It would look into frames; there are none.
 */
export async function violations(page: Page): Promise<string[]> {
  expect(page.frames()).toHaveLength(1);
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(AXE_SOURCE);
  const found = await page.evaluate(async (rules) => {
    // What the bar at the bottom covers can be scrolled free of it; axe takes it for too small.
    const bar = document.querySelector<HTMLElement>(".step-bar");
    bar?.style.setProperty("position", "static");
    // None of these rules reads the style sheets that axe would load again first.
    const options = { runOnly: rules, resultTypes: ["violations" as const], preload: false };
    const { violations } = await window.axe.run(document, options);
    bar?.style.removeProperty("position");
    return violations;
  }, RULES);
  return found.map(
    ({ id, nodes }) =>
      `${id}: ${nodes
        .slice(0, 3)
        .map(({ target }) => target.join(" "))
        .join(", ")}`,
  );
}
