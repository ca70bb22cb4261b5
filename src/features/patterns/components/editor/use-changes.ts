import { useMemo } from "react";
import { patternChanges, type PatternChange } from "@/engine/editing";
import { useEditing } from "./editing";

/** What the draft changes in the revision, as far as it can be read; what cannot is shown as typed. */
export function useChanges(): PatternChange[] {
  const { base, pattern, document } = useEditing();
  return useMemo(() => patternChanges(base, document ?? pattern), [base, pattern, document]);
}
