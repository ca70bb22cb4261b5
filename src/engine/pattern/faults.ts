import { z } from "zod";

/** One thing wrong with a document: where, as `testers[3].readings[0].cm` (`$` for the whole), and a sentence. */
export interface Fault {
  readonly path: string;
  readonly says: string;
}

export const faultSchema: z.ZodType<Fault> = z.strictObject({ path: z.string(), says: z.string() });

export type PathPart = string | number;

/** @returns the path as text: `sizes[2].body.bust`, `$` for the whole document. */
export function formatPath(parts: readonly PathPart[]): string {
  let path = "";
  for (const part of parts) {
    if (typeof part === "number") path += `[${part}]`;
    else path += path === "" ? part : `.${part}`;
  }
  return path === "" ? "$" : path;
}
