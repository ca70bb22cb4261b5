import type { Term } from "./pattern-document";

/** Ids of the counts that a term of a measurement needs, those on both sides of a diagonal too. */
export function countsOfTerm(term: Term): string[] {
  if ("diagonal" in term) return [...term.diagonal.across, ...term.diagonal.along].flatMap(countsOfTerm);
  return "count" in term ? [term.count] : [];
}
