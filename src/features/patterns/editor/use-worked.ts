import { useDeferredValue, useMemo } from "react";
import { workDraft, type WorkedDraft } from "@/engine/editing";
import { useEditing } from "./editing";

/** The garment that is being edited as it is worked; typing has priority over it. */
export function useWorked(): WorkedDraft | null {
  const { readable, pattern, size, unit } = useEditing("readable", "pattern", "size", "unit");
  const garment = useDeferredValue(pattern.garment);
  return useMemo(
    () => (readable === null ? null : workDraft({ readable, garment, size, unit })),
    [readable, garment, size, unit],
  );
}
