import type { PatternDocument } from "@/engine/pattern";
import { DAY_FIELDS, fieldNames } from "./field-names";
import { initialListing } from "./initial-listing";
import type { TypedListing } from "./schema";

interface Earlier {
  /** The earlier test's listing as its form has it; null where it had none. */
  readonly typed: TypedListing | null;
  readonly title: string;
}

/** The listing of a test that follows another: what that one said, with days still to be chosen. */
export function nextListing(pattern: PatternDocument, { typed, title }: Earlier): TypedListing {
  if (typed === null) return initialListing(pattern, { title, places: null, timeZone: "" });
  const names = new Set(fieldNames(pattern));
  const kept = Object.entries(typed).filter(([name]) => names.has(name));
  const noDays = Object.fromEntries(DAY_FIELDS.map((field) => [field, ""]));
  return { ...Object.fromEntries(kept), ...noDays, title };
}
