import { Notice } from "@/ui/notice";
import type { SwatchTry } from "./swatch-tries";

/** Explains that continuing off gauge is the tester's choice, and that the designer will know. */
export function OffGauge({ tries }: { readonly tries: readonly SwatchTry[] }) {
  const counted = tries.flatMap(({ outcome }) => (outcome?.counts ? [outcome] : []));
  if (!counted.some(({ outlook }) => outlook !== null && outlook.words.advice !== null)) return null;
  return (
    <div className="mt-6">
      <Notice title="You can continue with this gauge">
        The designer sees your gauge with your report. Your finished measurements are compared with what your own gauge
        gives, so a different gauge does not count against the pattern.
      </Notice>
    </div>
  );
}
