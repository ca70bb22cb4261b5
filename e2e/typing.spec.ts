import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { expectNoSidewaysScroll } from "./import-call";
import { expect, test } from "./fixtures";
import { letIn, makeTester, typeReport } from "./make-tester";
import { expectOpen, goHome, lookAwayAndBack, openMeasurement, openStep } from "./tester-steps";
import { storedFields, tapeLabel, typeSlowly, unfold } from "./tester-steps";

const { measurements } = saltmarshPattern;
const PLACES = [0, 3, measurements.length - 1];

/** Plausible lengths for the measurements before one, so that it is the next that the step opens. */
function measuredBefore(place: number, text: string): Record<string, string> {
  return Object.fromEntries(measurements.slice(0, place).map(({ id }) => [`reading.${id}.1.value`, text]));
}

for (const [unit, before, said] of [
  ["cm", "40", "57,5"],
  ["in", "15 3/4", "22 5/8"],
] as const)
  test(`a measurement typed with pauses stays where it was typed, in ${unit}, for the first, a middle and the last one`, async ({
    page,
    context,
  }) => {
    test.setTimeout(180_000);
    for (const place of PLACES) {
      const { id = "", label = "" } = measurements[place] ?? {};
      const tester = await makeTester(saltmarshPattern, { unit });
      await typeReport(tester, measuredBefore(place, before));
      await letIn(context, tester);
      await page.goto(`/testing/${tester.testerId}`);
      await openStep(page, "Measurements");
      await expectOpen(page, label);
      await typeSlowly(page, tapeLabel(label), said);
      await expectOpen(page, label);
      await expect(page.getByLabel(tapeLabel(label))).toHaveValue(said);
      await lookAwayAndBack(page);
      await expect(page.getByText("Saved.")).toBeVisible();
      await goHome(page);
      await page.goBack();
      await expectOpen(page, label);
      await expect(page.getByLabel(tapeLabel(label))).toHaveValue(said);
      await expectNoSidewaysScroll(page);
      expect(await storedFields(tester, /^reading\..*\.value$/)).toEqual({
        ...measuredBefore(place, before),
        [`reading.${id}.1.value`]: said,
      });
    }
  });

test("Next, pressed before the page's scripts have come, keeps what was typed and goes on", async ({
  page,
  context,
}) => {
  const tester = await makeTester(saltmarshPattern);
  await letIn(context, tester);
  let goOn = () => {};
  const pressed = new Promise<void>((resolve) => {
    goOn = resolve;
  });
  await page.route(/\.js(\?|$)/, async (route) => {
    await pressed;
    await route.continue();
  });
  await page.goto(`/testing/${tester.testerId}`, { waitUntil: "commit" });
  await page.getByRole("link", { name: "Go to swatch" }).click({ noWaitAfter: true });
  await page.getByLabel("Stitches", { exact: true }).pressSequentially("22");
  await page.getByRole("button", { name: "Next: The pattern" }).click({ noWaitAfter: true });
  await expect(page.getByRole("heading", { level: 1, name: "The pattern" })).toBeVisible();
  goOn();
  expect(await storedFields(tester, /^swatch\.1\.stitches$/)).toEqual({ "swatch.1.stitches": "22" });
});

test("a measurement is taken once more where it was taken, and both readings stay where they were typed", async ({
  page,
  context,
}) => {
  const tester = await makeTester(saltmarshPattern);
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  await openStep(page, "Measurements");
  await openMeasurement(page, "Length");
  await expect(page.getByRole("link", { name: "Add another reading" })).toHaveCount(0);
  await typeSlowly(page, tapeLabel("Length"), "57");
  await page.getByRole("link", { name: "Add another reading" }).click();
  await typeSlowly(page, tapeLabel("Length", 2), "58");
  await expect(page.getByLabel(tapeLabel("Length", 1))).toHaveValue("57");
  await expect(page.getByLabel(tapeLabel("Length", 2))).toHaveValue("58");
});

test("whatever is typed with pauses stays in its field, on every step that a tester walks through by its links", async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  const tester = await makeTester(saltmarshPattern);
  await letIn(context, tester);
  await page.goto(`/testing/${tester.testerId}`);
  const walked = [
    { step: "Swatch", fields: { Needle: "3.75", Stitches: "22", "Rows or rounds": "30" } },
    { step: "Your counts", fields: { "Neck stitches": "71" } },
    {
      step: "Yarn",
      fields: { "One ball weighs": "51", "Weight before": "412", "Weight left": "37", "About how many hours": "38" },
    },
    { step: "Fit", fields: { "In your words (optional)": "roomy 🧶" } },
  ];
  for (const { step, fields } of walked) {
    await openStep(page, step);
    if (step === "Swatch") await unfold(page, /^Needle: 4 mm, as in the pattern/);
    for (const [label, text] of Object.entries(fields)) {
      await page.getByLabel(label, { exact: true }).first().clear();
      await typeSlowly(page, label, text);
    }
    await lookAwayAndBack(page);
    await expect(page.getByText("Saved.")).toBeVisible();
    await expectNoSidewaysScroll(page);
    await goHome(page);
    await openStep(page, step);
    for (const [label, text] of Object.entries(fields))
      await expect(page.getByLabel(label, { exact: true }).first()).toHaveValue(text);
  }
});
