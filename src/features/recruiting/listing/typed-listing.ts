import type { Places } from "@/engine/pattern";
import { mostTesters, usualMost } from "@/engine/places";
import { bodyField, DAY_FIELDS, leastField, mostField, NOTICE_FIELDS, TEXT_FIELDS, wantedField } from "./field-names";
import { SHARING_FIELDS, type PhotoSharing } from "./photo-sharing-schema";
import { YOUNGEST_AGE, type ListingDocument, type NoticeFacts, type TypedListing } from "./schema";

/** A test is talked about for some time after its end. */
const USUAL_MONTHS = 12;

interface Published {
  readonly title: string;
  readonly places: Places;
  readonly document: ListingDocument;
  /** The designer's own text. */
  readonly agreement: string;
  readonly sharing: PhotoSharing;
}

/** A published listing as the form's fields. */
export function typedListing({ title, places, document, agreement, sharing }: Published): TypedListing {
  const { dates, timeZone, mostApplications, bodyAsked, fitBy } = document;
  return {
    title,
    ...Object.fromEntries(TEXT_FIELDS.map((field) => [field, document[field]])),
    ...typedPlaces(places),
    timeZone,
    ...Object.fromEntries(DAY_FIELDS.map((field) => [field, dates[field]])),
    ...Object.fromEntries(bodyAsked.map((id) => [bodyField(id), fitBy.includes(id) ? "fit" : "asked"])),
    mostApplications: mostApplications === null ? "" : String(mostApplications),
    releaseOn: document.releaseOn ?? "",
    agreement,
    ...Object.fromEntries(SHARING_FIELDS.map((field) => [field, sharing[field] ?? ""])),
    ...typedNotice(document.notice),
  };
}

/** The designer's part of the privacy notice as the form's fields, with the usual numbers until they have given their own. */
export function typedNotice({
  responsible = "",
  contact = "",
  minimumAge = YOUNGEST_AGE,
  monthsStored = USUAL_MONTHS,
  more = "",
}: Partial<NoticeFacts> = {}): TypedListing {
  return {
    [NOTICE_FIELDS.responsible]: responsible,
    [NOTICE_FIELDS.contact]: contact,
    [NOTICE_FIELDS.minimumAge]: String(minimumAge),
    [NOTICE_FIELDS.monthsStored]: String(monthsStored),
    [NOTICE_FIELDS.more]: more,
  };
}

/** Places as the form's fields; sizes without spots have empty fields, unless they may still have testers by hand. */
export function typedPlaces(places: Places): TypedListing {
  return Object.fromEntries(
    Object.entries(places)
      .filter(([, place]) => place.wanted > 0 || mostTesters(place) !== usualMost(0))
      .flatMap(([size, { least, wanted, most = usualMost(wanted) }]) => [
        [leastField(size), String(least)],
        [wantedField(size), String(wanted)],
        [mostField(size), String(most)],
      ]),
  );
}
