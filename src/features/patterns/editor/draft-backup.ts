import { draftEditsSchema, type DraftEdits } from "../schema";

const keyOf = (patternId: string) => `sizewright-draft-${patternId}`;

/** Edits that this browser stores until the server has them; null where there are none. */
export function readBackup(patternId: string): DraftEdits | null {
  try {
    const parsed = draftEditsSchema.safeParse(JSON.parse(localStorage.getItem(keyOf(patternId)) ?? "null"));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

/** Stores edits in this browser. Failing to store them must not interrupt typing. */
export function writeBackup(patternId: string, backup: DraftEdits): void {
  try {
    localStorage.setItem(keyOf(patternId), JSON.stringify(backup));
  } catch {
    return;
  }
}

export function dropBackup(patternId: string): void {
  try {
    localStorage.removeItem(keyOf(patternId));
  } catch {
    return;
  }
}
