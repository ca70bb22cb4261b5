import type { Locator, Page } from "@playwright/test";
import { upgradePattern } from "../src/engine/pattern";
import { patternDocument, patternDocument1 } from "../test/factories/pattern";
import { expectNoSidewaysScroll } from "./import-call";
import { expect, test } from "./fixtures";
import { importPattern, openEditor } from "./make-pattern";

const YARNS = [{ id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 }];

/** The test pattern with rows and numbers for a front; it has no pieces yet. */
function noPieces() {
  const base = patternDocument({ craft: "knitting", yarns: YARNS });
  const stitches = (id: string, label: string) => ({ id, label, fabric: "main", direction: "stitches" }) as const;
  return {
    ...base,
    counts: [...base.counts, stitches("underarm", "Underarm"), stitches("neck", "Neck"), stitches("side", "Side")],
    grading: {
      ...base.grading,
      ...{ underarm: { small: 5, large: 7 }, neck: { small: 30, large: 34 }, side: { small: 29, large: 35 } },
    },
  };
}

/** Adds what is done next, and gives its open step. */
async function next(page: Page, label: string): Promise<Locator> {
  const steps = page.getByRole("region", { name: "How it is worked" });
  await steps.getByRole("button", { name: label, exact: true }).click();
  return steps;
}

/** The step with this number. */
function step(page: Page, number: number): Locator {
  return page
    .getByRole("listitem")
    .filter({ has: page.getByRole("button", { name: `Remove step ${number}`, exact: true }) })
    .last();
}

async function choose(row: Locator, label: string, choice: string): Promise<void> {
  await row.getByLabel(label, { exact: true }).selectOption({ label: choice });
}

test("a front is built by adding what is done next, with the stitches after each step in every size", async ({
  page,
  designer,
}) => {
  test.setTimeout(150_000);
  expect(designer.accountId).not.toBe("");
  await openEditor(page, await importPattern(page, noPieces()), "pieces");
  await expect(page.getByText("No pieces yet")).toBeVisible();
  await page.getByRole("button", { name: "A piece" }).click();
  await page.getByLabel("Name", { exact: true }).fill("Front");
  await next(page, "Cast on");
  await choose(step(page, 1), "Stitches", "Width");
  await expect(step(page, 1)).toContainText("Cast on 98 (118) stitches");
  await expect(step(page, 1)).toContainText("98 stitches of “piece” are still live at the end.");
  await next(page, "Work even");
  await choose(step(page, 2), "Rows", "Height");
  await expect(step(page, 2)).toContainText("Work 100 (110) rows even");
  await next(page, "Bind off at an edge");
  await choose(step(page, 3), "Stitches", "Underarm");
  // By hand: 98 − 2 × 5 and 118 − 2 × 7.
  await expect(step(page, 3)).toContainText("Bind off 5 (7) stitches at the start of the next 2 rows");
  await expect(step(page, 3)).toContainText("On the needle: 88 (104), after row 102 (112)");

  // A count that is not there yet is made in place.
  await next(page, "Work even");
  await choose(step(page, 4), "Rows", "New count …");
  await page.getByLabel("Name of the new count").fill("Armhole rows");
  await page.getByRole("button", { name: "Add count" }).click();
  await expect(step(page, 4)).toContainText("“Armhole rows” has no number yet.");
  await choose(step(page, 4), "Rows", "The same in every size");
  await step(page, 4).getByLabel("Rows: number", { exact: true }).fill("40");
  await expect(step(page, 4)).toContainText("On the needle: 88 (104), after row 142 (152)");

  await next(page, "Hold the centre, work each side apart");
  const divide = step(page, 5);
  for (const [at, count] of ["Side", "Neck", "Side"].entries())
    await divide.getByLabel("Stitches", { exact: true }).nth(at).selectOption({ label: count });
  await expect(divide).toContainText("piece-right 29 (35) · piece-centre 30 (34) · piece-left 29 (35)");
  await expect(page.getByRole("img", { name: /^Front in/ })).toBeVisible();
  await expectNoSidewaysScroll(page);

  // Where it cannot be worked, the step says in which size, and the rest is drawn.
  await step(page, 3).getByRole("button", { name: /^3\. / }).click();
  await choose(step(page, 3), "Stitches", "Neck");
  await expect(divide).toContainText(/“piece” has 38 stitches, and 29 \+ 30 \+ 29 = 88 are divided/);
  await expect(page.getByRole("img", { name: /^Front in/ })).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(divide).not.toContainText("are divided");

  // By hand: the 30 stitches at the centre are 15 cm; the whole side is far longer.
  await page.getByText("Side edges to pick up along").click();
  await page.getByRole("button", { name: "The left edge of piece", exact: true }).click();
  await page.getByRole("button", { name: "A seam" }).click();
  const seam = page.getByRole("listitem").filter({ has: page.getByRole("button", { name: "Remove seam 1" }) });
  await choose(seam, "Edge", "piece-left-2");
  await choose(seam, "sewn to", "piece-neck");
  await expect(seam).toContainText(/▲ S: “piece-left-2” is .* cm long and “piece-neck” 15\.0 cm/);
  await seam.getByRole("button", { name: "Remove seam 1" }).click();

  await step(page, 4).getByRole("button", { name: "Move step 4 up" }).click();
  await expect(step(page, 3)).toContainText("Work 40 rows even");
  await expect(step(page, 4)).toContainText("Bind off 5 (7)");
  await step(page, 3).getByTitle("Drag to move").dragTo(step(page, 4));
  await expect(step(page, 4)).toContainText("Work 40 rows even");

  await expect(page.getByText(/Saved \d/)).toBeVisible();
  await page.reload();
  await expect(step(page, 5)).toContainText("Divide: 29 (35) for “piece-right”");
});

test("a pattern of sections opens as it was, and says what would make it whole", async ({ page, designer }) => {
  expect(designer.accountId).not.toBe("");
  const base = patternDocument1({ craft: "knitting", yarns: YARNS });
  const top = { id: "top", label: "Top", fabric: "main", direction: "stitches" } as const;
  const old = upgradePattern({
    ...base,
    counts: [...base.counts, top],
    pieces: [
      {
        ...{ id: "front", label: "Front", fabric: "main", made: 2, yarn: "wool" },
        sections: [
          { from: "width", to: "width", rows: "height" },
          { from: "top", to: "top", rows: "height" },
        ],
      },
    ],
    grading: { ...base.grading, top: { small: 80, large: 90 } },
  });
  await openEditor(page, await importPattern(page, old), "pieces");
  await expect(step(page, 2)).toContainText("From 98 (118) to 98 (118) stitches over 100 (110) rows");
  await expect(step(page, 3)).toContainText(
    "S: It starts on 80 stitches, and there are 98. Say what becomes of the difference",
  );
  // By hand: 2 × (98 × 100 + 80 × 100) = 35 600; in L 2 × (118 + 90) × 110 = 45 760.
  await expect(page.getByText(/(35,600|45,760) stitches worked in/)).toBeVisible();
  await page.getByRole("button", { name: /^2\. From 98/ }).click();
  await page.getByRole("button", { name: "Replace it with “Work even”" }).click();
  await expect(step(page, 2)).toContainText("Work 100 (110) rows even");
  await expectNoSidewaysScroll(page);
});
