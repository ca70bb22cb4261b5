import { ownValue } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLengthNumber } from "@/ui/format-length";
import type { CallListing } from "../loaders";
import { shownBody } from "./shown-body";
import { SpotTable } from "./spot-table";

/** Every size with the body measurements it is made for and its spots. */
export function SizeSpots({ listing, unit }: { readonly listing: CallListing; readonly unit: LengthUnit }) {
  const { pattern, places, document } = listing;
  const shown = shownBody(listing);
  return (
    <div className="max-w-3xl">
      <SpotTable
        heads={shown.map(({ id, label }) => ({ label: `${label}, ${unit}`, decides: document.fitBy.includes(id) }))}
        sizes={pattern.sizes.map(({ id: size, label, body }) => ({
          label,
          body: shown.map(({ id }) => {
            const cm = ownValue(body, id);
            return cm === undefined ? null : formatLengthNumber(cm, unit);
          }),
          spots: ownValue(places, size)?.wanted ?? 0,
        }))}
      />
      <p className="mt-2 text-sm text-soft">These are body measurements, not garment measurements.</p>
    </div>
  );
}
