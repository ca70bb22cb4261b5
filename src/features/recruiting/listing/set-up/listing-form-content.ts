import { powerOfTesters, testersNeeded } from "@/engine/gaps";
import { ownValue, type PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import type { ListingContent } from "./listing-fields";
import type { ListingFormProps } from "./listing-form";
import type { EditedListing } from "../edited-data";
import { askableMeasurements } from "../field-names";
import { DEFAULT_DROPOUT_RATE } from "@/engine/places";
import { usualInvitations } from "../usual-invitations";
import { completeListing } from "../complete-listing";
import { commonSpots, faultsOfAll } from "../same-for-all";

/** The most testers of one size for which the form says how many to invite. */
const MAX_ADVISED = 40;

const INVITATIONS = Array.from({ length: MAX_ADVISED + 1 }, (_, finishers) => usualInvitations(finishers));

/** What each pattern's numbers of testers find: a model works it out, so a page that only reads does it once a document. */
const advisedOf = new WeakMap<PatternDocument, Pick<FormContent["advice"], "needed" | "powers">>();

function advised(pattern: PatternDocument) {
  const known = advisedOf.get(pattern);
  if (known !== undefined) return known;
  const advice = {
    needed: testersNeeded(pattern),
    powers: [1, 2].map((testers) => powerOfTesters(pattern, testers)),
  };
  advisedOf.set(pattern, advice);
  return advice;
}

type FormContent = ListingContent & Pick<ListingFormProps, "open">;

/** What the listing's form shows besides what was typed. */
export function listingFormContent(
  pattern: PatternDocument,
  { listing, unit }: { readonly listing: EditedListing; readonly unit: LengthUnit },
): FormContent {
  const body = askableMeasurements(pattern);
  const sizedBy = body.find(({ id }) => id === pattern.sizeBy)?.label ?? pattern.sizeBy;
  const whole = completeListing(listing.typed, { pattern, now: new Date(), published: null });
  const isCommon = commonSpots(listing.typed, pattern.sizes) !== null;
  return {
    sizes: pattern.sizes.map(({ id, label, body: made }) => {
      const cm = ownValue(made, pattern.sizeBy);
      return { id, label, made: cm === undefined ? "" : `${sizedBy} ${formatLength(cm, unit)}` };
    }),
    body,
    craft: pattern.craft,
    advice: {
      ...advised(pattern),
      dropoutRate: DEFAULT_DROPOUT_RATE,
      invitations: INVITATIONS,
    },
    open: whole.ok ? [] : isCommon ? faultsOfAll(whole.faults, pattern) : whole.faults,
  };
}
