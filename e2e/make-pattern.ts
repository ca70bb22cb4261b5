import type { Page } from "@playwright/test";
import type { PatternDocument } from "../src/engine/pattern";
import { storePattern } from "../src/features/testing/report/document-mutations";
import { saltmarshPattern } from "../prisma/demo/saltmarsh-pattern";
import { signedIn } from "./designer";
import { takenOver } from "./taken-over";

/** Stores a pattern as the page's signed-in person, and opens it. @returns the pattern's id. */
export async function importPattern(page: Page, pattern: PatternDocument = saltmarshPattern): Promise<string> {
  const { patternId } = await storePattern(await signedIn(page.context()), { document: pattern });
  await page.goto(`/patterns/${patternId}`);
  return patternId;
}

export async function openEditor(page: Page, patternId: string, part = "grading"): Promise<void> {
  await page.goto(`/patterns/${patternId}/edit?part=${part}`);
  await takenOver(page.getByRole("button", { name: "Undo", exact: true }));
}
