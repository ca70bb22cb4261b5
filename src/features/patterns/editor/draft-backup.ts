import { localStore } from "@/ui/browser-store";
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
