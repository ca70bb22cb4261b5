import { expect, type Page } from "@playwright/test";
import axe from "axe-core";

declare global {
  interface Window {
    /** There once its source has been read in the page. */
    readonly axe: typeof axe;
  }
}

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
/**
 * Each broken rule with the elements that break it. Asked of axe itself: its builder for Playwright reads the source anew
 * and opens a page for every answer, which takes longer than the rules do. It would look into frames; there are none.
 */
export async function violations(page: Page): Promise<string[]> {
  expect(page.frames()).toHaveLength(1);
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
  const found = await page.evaluate(async (rules) => {
    // What the bar at the bottom covers can be scrolled free of it; axe takes it for too small.
    const bar = document.querySelector<HTMLElement>(".step-bar");
    bar?.style.setProperty("position", "static");
    const { violations } = await window.axe.run(document, { runOnly: rules, resultTypes: ["violations"] });
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
