import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { expect, test } from "./fixtures";
import { letIn, makeTester, typeReport } from "./make-tester";
import { violations } from "./violations";

const PAGES = ["", "/swatch", "/pattern", "/counts", "/measurements?m=bust", "/yarn", "/fit", "/report", "/your-data"];

/** Off gauge, with something to fix and something to answer. */
const TYPED = {
  ...{ "swatch.1.toolMm": "4.5", "swatch.1.stitches": "18", "swatch.1.across": "10", "swatch.1.washed": "yes" },
  ...{ "swatch.1.rows": "30", "swatch.1.along": "10", "swatch.2.stitches": "about 20" },
  ...{
    "worked.neck": "abc",
    "reading.bust.1.value": "51",
    "reading.length.1.value": "61",
    "fit.bust.says": "roomy 🧶",
  },
};

for (const scheme of ["light", "dark"] as const)
  test(`a tester's pages hold at 100 and 200 % text in ${scheme} colours`, async ({ page, context }) => {
    test.setTimeout(180_000);
    const tester = await makeTester(saltmarshPattern);
    await letIn(context, tester);
    await typeReport(tester, TYPED);
    // Without motion no colour is caught half-way.
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: "reduce" });
    for (const path of PAGES) {
      await page.goto(`/testing/${tester.testerId}${path}`);
      await page.getByRole("heading", { level: 1 }).waitFor();
      for (const [percent, size] of [
        [100, ""],
        [200, "212.5%"],
      ] as const) {
        await page.evaluate((fontSize) => (document.documentElement.style.fontSize = fontSize), size);
        expect.soft(await violations(page), `${path} at ${percent} %`).toEqual([]);
        expect.soft(await beyondScreen(), `${path} at ${percent} % scrolls sideways`).toEqual([]);
        expect.soft(await brokenNames(), `names of ${path} at ${percent} %`).toEqual([]);
        expect.soft(await brokenHeadings(), `headings of ${path} at ${percent} %`).toEqual([]);
      }
    }

    /** What makes a page scroll sideways. */
    async function beyondScreen(): Promise<string[]> {
      return await page.evaluate(() => {
        const { scrollWidth, clientWidth } = document.documentElement;
        const isBeyond = (element: Element) => element.getBoundingClientRect().right > clientWidth + 0.5;
        return scrollWidth <= clientWidth
          ? []
          : [...document.querySelectorAll("body *")]
              .filter((element) => isBeyond(element) && ![...element.children].some(isBeyond))
              .slice(0, 5)
              .map((element) => `${element.outerHTML.slice(0, 160)} in ${element.parentElement?.className}`);
      });
    }

    /** Words of headings that go on in the next line. */
    async function brokenHeadings(): Promise<string[]> {
      return await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("h1, h2")].flatMap((heading) => {
          const words: string[] = [];
          const walker = document.createTreeWalker(heading, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const text = walker.currentNode;
            for (const { 0: word, index } of (text.textContent ?? "").matchAll(/[^\s-]+/g)) {
              const range = document.createRange();
              range.setStart(text, index);
              range.setEnd(text, index + word.length);
              if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1) words.push(word);
            }
          }
          return words;
        }),
      );
    }

    /** Names in tables and rows that break into a letter or two a line. */
    async function brokenNames(): Promise<string[]> {
      return await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("th, .measured-row h2 .wrap-break-word")]
          .filter((name) => name.offsetWidth > 1 && name.scrollHeight > 0 && name.innerText.trim().length > 3)
          .filter((name) => name.offsetWidth < 2 * Number.parseFloat(getComputedStyle(name).fontSize))
          .map((name) => `${name.innerText}: ${name.offsetWidth} px`),
      );
    }
  });
