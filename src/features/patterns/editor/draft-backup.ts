import { localStore, tabStore } from "@/ui/browser-store";
import { draftEditsSchema, type DraftEdits } from "../schema";

const keyOf = (patternId: string) => `sizewright-draft-${patternId}`;

/** Edits that this browser stores until the server has them; null where there are none. */
export function readBackup(patternId: string): DraftEdits | null {
  return draftEditsSchema.safeParse(localStore.read(keyOf(patternId))).data ?? null;
}

/** Stores edits in this browser, or null for none. Failing to store them must not interrupt typing. */
export function writeBackup(patternId: string, backup: DraftEdits | null): void {
  localStore.write(keyOf(patternId), backup ?? undefined);
}

const savedKeyOf = (patternId: string) => `sizewright-saved-${patternId}`;

/** Notes which version the server has of what was edited in this tab. */
export function noteSaved(patternId: string, version: number): void {
  tabStore.write(savedKeyOf(patternId), version);
}

/** Whether a page was drawn before the server had what was last saved in this tab. Versions only rise. */
export function isOlderThanSaved(patternId: string, version: number): boolean {
  return Number(tabStore.read(savedKeyOf(patternId)) ?? 0) > version;
}
