import type { ReactNode } from "react";
import { ownValue, type Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { finishedOfPattern } from "@/features/patterns/computed";
import { ChoiceLinks } from "@/ui/choice-links";
import { formatLength } from "@/ui/format-length";
import { Sheet } from "@/ui/sheet";
import type { CallListing } from "../loaders";
import { openCallHref, spotWords } from "./open-call-copy";
import { shownBody } from "./shown-body";

interface SizePickerProps {
  readonly listing: CallListing;
  readonly size: Size;
  readonly unit: LengthUnit;
  /** How much yarn the size needs; null if it is not known yet. */
  readonly yarn: ReactNode;
}

/** One size at a time: the body it is made for, what the garment measures, its yarn and spots. Sizes are links, so it needs no scripts. */
export function SizePicker({ listing, size, unit, yarn }: SizePickerProps) {
  const { callId, pattern, places, document } = listing;
  const choices = pattern.sizes.map(({ id, label }) => ({
    href: openCallHref(callId, { size: id, unit }),
    label,
    current: id === size.id,
  }));
  return (
    <>
      <ChoiceLinks label="Size" choices={choices} />
      <Sheet className="mt-4 max-w-3xl">
        <div className="mb-4 flex flex-wrap items-baseline justify-between gap-x-6">
          <h3 className="min-w-0 wrap-anywhere">Size {size.label}</h3>
          <p className="text-soft">{spotWords(ownValue(places, size.id)?.wanted ?? 0)}</p>
        </div>
        <div className="grid gap-x-12 gap-y-5 sm:grid-cols-2">
          <div>
            <Lengths title="Made for this body" lengths={bodyLengths(listing, { size, unit })} />
            <Titled title="Yarn">
              {yarn ?? (
                <p className="text-soft">
                  {listing.pieces === null
                    ? "How much this size needs is not known yet: it is calculated from what testers use."
                    : "How much the tested pieces need is not known."}
                </p>
              )}
              {document.yarn === "" ? null : (
                <p dir="auto" className="mt-2 whitespace-pre-wrap wrap-anywhere">
                  {document.yarn}
                </p>
              )}
            </Titled>
          </div>
          <Lengths title="Finished measurements" lengths={finishedLengths(listing, { size, unit })} />
        </div>
      </Sheet>
    </>
  );
}

interface NamedLength {
  readonly id: string;
  readonly label: ReactNode;
  /** Null if it is not known. */
  readonly cm: string | null;
}

interface InSize {
  readonly size: Size;
  readonly unit: LengthUnit;
}

function bodyLengths(listing: CallListing, { size, unit }: InSize): NamedLength[] {
  return shownBody(listing).map(({ id, label }) => {
    const cm = ownValue(size.body, id);
    const decides = listing.document.fitBy.includes(id);
    return {
      id,
      label: decides ? `${label} (decides the size)` : label,
      cm: cm === undefined ? null : formatLength(cm, unit),
    };
  });
}

function finishedLengths({ tested }: CallListing, { size, unit }: InSize): NamedLength[] {
  return finishedOfPattern(tested).map(({ measurement: { id, letter, label }, sizes }) => {
    const cm = sizes.find((entry) => entry.size === size.id)?.designCm ?? null;
    return {
      id,
      label: (
        <>
          <span className="font-semibold">{letter}</span> {label}
        </>
      ),
      cm: cm === null ? null : formatLength(cm, unit),
    };
  });
}

function Lengths({ title, lengths }: { readonly title: string; readonly lengths: readonly NamedLength[] }) {
  if (lengths.length === 0) return null;
  return (
    <Titled title={title}>
      <dl>
        {lengths.map(({ id, label, cm }) => (
          <div key={id} className="flex justify-between gap-x-4 border-b border-line py-1 last:border-b-0">
            <dt className="min-w-0 wrap-anywhere">{label}</dt>
            <dd className="numbers shrink-0">{cm ?? <span className="text-soft">not yet</span>}</dd>
          </div>
        ))}
      </dl>
    </Titled>
  );
}

function Titled({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <div className="mb-5 last:mb-0">
      <h4 className="mb-1 text-sm font-semibold text-soft">{title}</h4>
      {children}
    </div>
  );
}
