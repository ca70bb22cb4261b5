import { z } from "zod";
import { typedSchema } from "../schema";

const backupSchema = z.object({ typed: typedSchema, version: z.int().min(0), baseNumber: z.int().min(1) });

export type DraftBackup = z.infer<typeof backupSchema>;

const keyOf = (patternId: string) => `sizewright-draft-${patternId}`;

/** Edits that this browser keeps until the server has them, null where there are none. */
export function readBackup(patternId: string): DraftBackup | null {
  try {
    const parsed = backupSchema.safeParse(JSON.parse(localStorage.getItem(keyOf(patternId)) ?? "null"));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

/** Keeps edits in this browser. A browser that keeps nothing is no reason to stop typing. */
export function writeBackup(patternId: string, backup: DraftBackup): void {
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
