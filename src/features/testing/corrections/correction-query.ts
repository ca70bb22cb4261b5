import { z } from "zod";
import { numberChangesSchema, type NumberChange } from "@/features/calls/correction-schema";
import { MAX_COUNTS } from "./max-counts";

const lists = z
  .union([z.string().transform((text) => [text]), z.array(z.string())])
  .default([])
  .catch([]);

/** What the address asks the form of a correction to hold; unknown values are ignored. */
export interface CorrectionQuery {
  /** Counts whose numbers stand in the form. */
  readonly counts: readonly string[];
  /** Numbers that are filled in already. */
  readonly changes: readonly NumberChange[];
}

/** @param query `count=width`, and `change=width.small.105.98`: count, size, number in the text, right number; both repeated. */
export function correctionQuery(query: Readonly<Record<string, unknown>>): CorrectionQuery {
  const changes = lists.parse(query["change"]).flatMap((text) => {
    const [count, size, was, becomes] = text.split(".");
    return numberChangesSchema.safeParse([{ count, size, was: Number(was), becomes: Number(becomes) }]).data ?? [];
  });
  const counts = [...changes.map(({ count }) => count), ...lists.parse(query["count"])];
  return { counts: [...new Set(counts)].slice(0, MAX_COUNTS), changes };
}

/** Asks for the form with these numbers filled in, after the address of the page. */
export function correctionSearch(changes: readonly NumberChange[]): string {
  const texts = changes.map(({ count, size, was, becomes }) => ["change", `${count}.${size}.${was}.${becomes}`]);
  return `?${new URLSearchParams(texts)}#corrections`;
}
