import { existsSync } from "node:fs";
import { chromium, type Browser, type Locator, type Page } from "playwright";
import { DERIVED_MARK, keyTimes, TRACED, type KeyTimes } from "./key-times";

const SYSTEM_CHROMIUM = ["/usr/bin/chromium", "/usr/bin/chromium-headless-shell"].find((file) => existsSync(file));
/** Digits of one number follow each other like this, ms; a practised typist is no faster in numbers. */
const FASTEST_MS = 120;
const SLOWEST_MS = 240;
/** Between two numbers; now and then longer than the editor waits before it saves. */
const BETWEEN_MS = 400;
const REST_MS = 1_300;
const REST_EVERY = 6;

export async function launchBrowser(): Promise<Browser> {
  return await chromium.launch({
    ...(SYSTEM_CHROMIUM === undefined ? {} : { executablePath: SYSTEM_CHROMIUM }),
    args: process.getuid?.() === 0 ? ["--no-sandbox"] : [],
  });
}

export interface Typing {
  /** Fields in the order in which they are typed in. */
  readonly fields: readonly {
    /** What is scrolled to first, one after the other, where the field may not be drawn before. */
    readonly within?: readonly Locator[];
    readonly field: Locator;
    readonly digits: string;
  }[];
  /** What is drawn or said from the numbers: every change of it is marked. */
  readonly derived: Locator;
}

/** Types at a person's pace and times every key by the browser's own trace. */
export async function timeTyping(page: Page, { fields, derived }: Typing): Promise<KeyTimes> {
  await derived.evaluate((element, mark) => {
    new MutationObserver(() => performance.mark(mark)).observe(element, {
      ...{ subtree: true, childList: true, characterData: true, attributes: true },
    });
  }, DERIVED_MARK);
  const browser = page.context().browser();
  if (browser === null) throw new Error("a page outside of a browser cannot be traced");
  await browser.startTracing(page, { categories: TRACED });
  let typed = 0;
  for (const [index, { within = [], field, digits }] of fields.entries()) {
    for (const around of within) await around.scrollIntoViewIfNeeded();
    // By no key, for every key in the trace is to be a digit.
    await field.selectText();
    await page.waitForTimeout(index % REST_EVERY === 0 ? REST_MS : BETWEEN_MS);
    for (const digit of digits) {
      await page.keyboard.press(digit);
      typed += 1;
      await page.waitForTimeout(FASTEST_MS + ((typed * 37) % (SLOWEST_MS - FASTEST_MS)));
    }
  }
  await page.waitForTimeout(BETWEEN_MS);
  return keyTimes((await browser.stopTracing()).toString("utf8"));
}
