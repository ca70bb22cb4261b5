import { Notice } from "@/ui/notice";
import type { SwatchTry } from "../../swatch-tries";

/** What going on off gauge means: hers to choose, and the designer's to know. */
export function OffGauge({ tries }: { readonly tries: readonly SwatchTry[] }) {
  const counted = tries.flatMap(({ outcome }) => (outcome?.counts ? [outcome] : []));
  if (!counted.some(({ outlook }) => outlook.words.advice !== null)) return null;
  return (
    <div className="mt-6">
      <Notice title="Going on with this gauge is yours to choose">
        Nothing stops you. The designer sees it with your report, and your finished measurements are compared with what
        your own gauge gives, so the pattern is not blamed for your hands, nor your hands for the pattern.
      </Notice>
    </div>
  );
}
