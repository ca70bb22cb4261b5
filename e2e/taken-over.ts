import { expect, type Locator } from "@playwright/test";

/** Waits until the page's scripts have taken an element over; what is done with it before, they do not hear of. */
export async function takenOver(element: Locator): Promise<void> {
  const hasProperties = () =>
    element.evaluate((node) => Object.keys(node).some((key) => key.startsWith("__reactProps")));
  await expect.poll(hasProperties).toBe(true);
}
