import type { Locator, Page } from "@playwright/test";
import { finishedMeasurements } from "../src/engine/prediction";
import { formatExactLength } from "../src/ui/format-exact-length";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { query } from "./designer";
import { expect, test } from "./fixtures";
import { letIn, makeTester } from "./make-tester";
import { storedFields, tapeLabel } from "./tester-steps";

/** Six measurements, one of them around the body, one yarn, and one part of the body to say how it fits. */
const LEFT_OUT = new Set(["upper-arm", "neck-depth"]);
const PATTERN = {
  ...saltmarshPattern,
  sizes: saltmarshPattern.sizes.map(({ body: { bust = 0 }, ...size }) => ({ ...size, body: { bust } })),
  bodyMeasurements: saltmarshPattern.bodyMeasurements?.filter(({ id }) => id === "bust") ?? [],
  measurements: saltmarshPattern.measurements.filter(({ id }) => !LEFT_OUT.has(id)),
};
const SIZE = "size-m";

/** What an honest report may cost. */
const MAX_TAPS = 25;
const MAX_PAGES = 8;

/** A thumb: it counts what it touches on the screen, and the pages that it comes to. What it types is not counted. */
class Thumb {
  taps = 0;
  readonly pages: string[] = [];

  constructor(private readonly page: Page) {
    page.on("framenavigated", (frame) => {
      const { pathname } = new URL(frame.url());
      if (frame === page.mainFrame() && this.pages.at(-1) !== pathname) this.pages.push(pathname);
    });
  }

  async tap(target: Locator): Promise<void> {
    this.taps += 1;
    await target.tap();
  }

  /** Into the field that has the keyboard. */
  async type(field: Locator, text: string): Promise<void> {
    await expect(field).toBeFocused();
    await this.page.keyboard.type(text);
  }

  async tapAndType(label: string, text: string): Promise<void> {
    const field = this.page.getByLabel(label, { exact: true });
    await this.tap(field);
    await this.type(field, text);
  }

  async goOn(label: string, heading: string): Promise<void> {
    const next = { name: `Next: ${label}` };
    // A page without fields has a link.
    await this.tap(this.page.getByRole("button", next).or(this.page.getByRole("link", next)));
    await expect(this.page.getByRole("heading", { level: 1, name: heading })).toBeVisible();
  }
}

/** What the tape says of each measurement in this size, as planned; of the one around the body half of it, for it lies flat. */
function readings(unit: "cm" | "in"): { id: string; label: string; text: string }[] {
  return finishedMeasurements(PATTERN).map(({ measurement: { id, label, girth }, sizes }) => {
    const planned = sizes.find(({ size }) => size === SIZE)?.designCm ?? 0;
    const cm = girth === true ? planned / 2 : planned;
    // To a whole centimetre, or a half of an inch.
    const text =
      unit === "cm" ? String(Math.round(cm)) : formatExactLength((Math.round((cm / 2.54) * 2) / 2) * 2.54, "in");
    return { id, label, text };
  });
}

for (const unit of ["cm", "in"] as const)
  test(`an honest report of six measurements and one yarn takes ${MAX_TAPS} taps and ${MAX_PAGES} pages, in ${unit}`, async ({
    page,
    context,
  }) => {
    const tester = await makeTester(PATTERN, { size: SIZE, unit });
    await letIn(context, tester);
    const thumb = new Thumb(page);
    await page.goto(`/testing/${tester.testerId}`);

    await thumb.tap(page.getByRole("link", { name: "Go to swatch" }));
    await thumb.tapAndType("Stitches", "22");
    await thumb.tapAndType("Rows or rounds", "30");
    await thumb.tap(page.getByRole("radio", { name: "Yes" }));
    await thumb.goOn("The pattern", "The pattern");
    await thumb.goOn("Your counts", "Your counts");
    await thumb.tap(page.getByRole("checkbox", { name: /^I followed the pattern everywhere/ }));
    await thumb.goOn("Measurements", "Measurements");

    await thumb.tap(page.getByRole("button", { name: "flat, one width" }));
    await thumb.tap(page.getByRole("button", { name: "washed and dried" }));
    const tape = readings(unit);
    for (const [index, { label, text }] of tape.entries()) {
      const field = page.getByLabel(tapeLabel(label), { exact: true });
      await thumb.tap(index === 0 ? field : page.getByRole("button", { name: `Next: ${label}`, exact: true }));
      const [whole = "", fraction] = text.split(" ");
      await thumb.type(field, whole);
      // A key as those of the keypad above which it stands.
      if (fraction !== undefined) await page.getByRole("button", { name: `${fraction} inch` }).tap();
      await expect(field).toHaveValue(text);
    }
    await thumb.goOn("Yarn", "Yarn you used");
    await thumb.tapAndType("Weight before", "412");
    await thumb.tapAndType("Weight left", "37");
    await thumb.tap(page.getByRole("group", { name: "Does this include your swatch?" }).getByText("yes"));
    await thumb.tapAndType("About how many hours", "38");
    await thumb.goOn("Fit", "How it fits");
    await thumb.tap(page.getByRole("radio", { name: "as wished" }));
    await thumb.goOn("Review and send", "Review and send");
    await expect(page.getByText("38 hours.")).toBeVisible();
    for (const open of ["Needs fixing", "Questions still open", "Not measured:"])
      await expect(page.getByText(open)).toHaveCount(0);
    await thumb.tap(page.getByRole("button", { name: "Send report" }));
    await expect(page.getByText("Your report is sent, version 1. Thank you.")).toBeVisible();

    expect(thumb.taps).toBeLessThanOrEqual(MAX_TAPS);
    expect(thumb.pages.length).toBeLessThanOrEqual(MAX_PAGES);
    expect(await query("SELECT version FROM report WHERE tester_id = $1", [tester.testerId])).toEqual([{ version: 1 }]);
    expect(await storedFields(tester, /^reading\..*\.value$/)).toEqual(
      Object.fromEntries(tape.map(({ id, text }) => [`reading.${id}.1.value`, text])),
    );
    expect(new Set(Object.values(await storedFields(tester, /^reading\..*\.state$/)))).toEqual(new Set(["washed"]));
    expect(await storedFields(tester, /^(reading\..*\.way|swatch\.1\.toolMm|hours)$/)).toEqual({
      ...{ "reading.bust.1.way": "flat", "swatch.1.toolMm": "4", hours: "38" },
    });
  });
