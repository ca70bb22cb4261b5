import type { Page } from "@playwright/test";
import { expect, test } from "./fixtures";
import { expectNoSidewaysScroll } from "./import-call";
import { makeThirty } from "./make-thirty";

const STEPS = [
  "2 applications need your decision.",
  "1 invitation ended without an answer.",
  "1 question waits for your answer.",
  "2 testers are stuck.",
  "1 tester has stopped.",
  "2 testers are late.",
  "1 tester declined, and a spot in their size is open.",
  "2 testers are off gauge and have not started the garment.",
  "2 testers have sent no news for 10 days or more.",
];

/** What the list of the page says, without what the results of a simulated call may add. */
async function stepsOf(page: Page): Promise<(string | undefined)[]> {
  const items = page.getByRole("list").filter({ hasText: STEPS[0] }).last().getByRole("listitem");
  await expect(items.first()).toBeVisible();
  const said = (await items.allTextContents()).filter((text) => !/mistake|came out different/.test(text));
  return said.map((text) => STEPS.find((step) => text.startsWith(step)) ?? text);
}

async function peopleOf(page: Page): Promise<Record<string, string>> {
  const rows = page.getByRole("region", { name: "Testers", exact: true }).locator("tbody tr");
  const found = await rows.evaluateAll((all) =>
    all.map((row) => [
      row.querySelector("th bdi")?.textContent ?? "",
      [...row.querySelectorAll(".needs li")].map((need) => need.textContent).join(", "),
    ]),
  );
  return Object.fromEntries(found) as Record<string, string>;
}

for (const width of [1280, 360])
  test(`a designer of thirty testers finds everybody who needs something in one list, ${width} px wide`, async ({
    page,
    designer,
  }) => {
    await page.setViewportSize({ width, height: 800 });
    const { inNeed, others } = await makeThirty(designer);
    await page.goto("/");
    await expect(page.getByRole("heading", { name: "What needs you" })).toBeVisible();
    expect(await stepsOf(page)).toEqual(STEPS);
    await expectNoSidewaysScroll(page);
    await page.getByRole("link", { name: "Winter test" }).first().click();
    await expect(page.getByRole("heading", { name: "So far" })).toBeVisible();
    expect(await stepsOf(page)).toEqual(STEPS);

    await page.getByRole("link", { name: "See who is late" }).click();
    await expect(page.getByRole("link", { name: "Late 2" })).toHaveAttribute("aria-current", "true");
    expect(await stepsOf(page)).toEqual(STEPS);
    expect(Object.values(await peopleOf(page))).toEqual(["late", "late"]);
    await page.getByRole("link", { name: "All who need you" }).click();
    await expect(page.getByRole("link", { name: "All who need you" })).toHaveAttribute("aria-current", "true");
    await expect(async () => {
      const found = await peopleOf(page);
      expect(Object.keys(found).toSorted()).toEqual(Object.keys(inNeed).toSorted());
      for (const [name, need] of Object.entries(inNeed)) expect(found[name], name).toContain(need);
    }).toPass();
    await expectNoSidewaysScroll(page);

    await page.getByRole("link", { name: "Everyone", exact: true }).click();
    await expect(page.getByRole("link", { name: "Everyone", exact: true })).toHaveAttribute("aria-current", "true");
    await expect(async () => {
      const everyone = await peopleOf(page);
      expect(Object.keys(everyone)).toHaveLength(30);
      expect(others.filter((name) => everyone[name] !== "")).toEqual([]);
    }).toPass();
    const stages = page.getByRole("region", { name: "Testers by size" });
    await expect(stages.locator("tbody tr")).toHaveCount(9);
    const hidden = await stages.evaluate((frame) => {
      const last = frame.querySelector("thead th:last-child")?.getBoundingClientRect().right ?? Infinity;
      return last - frame.getBoundingClientRect().right;
    });
    expect(hidden).toBeLessThanOrEqual(0);
    await expect(stages.getByRole("row", { name: /^4X/ })).toContainText("3 of 4");
    await expect(page.getByRole("link", { name: "Find a tester" }).first()).toHaveAttribute("href", /\/sizes$/);
  });
