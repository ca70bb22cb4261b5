import { ownValue, type PatternDocument, type Places } from "@/engine/pattern";
import { BODY } from "@/engine/trade-tables";
import { YOUNGEST_AGE, type ListingDocument } from "../../listing/schema";
import { formatLength } from "@/ui/format-length";
import type { AgreementShown, AskedMeasurement, AskedOfApplicants, OfferedSize } from "./apply-answer";

interface PublishedFacts {
  readonly pattern: PatternDocument;
  readonly places: Places;
  readonly document: Pick<ListingDocument, "bodyAsked" | "fitBy" | "notice">;
  readonly agreement: AgreementShown;
}

/** What a published call asks its applicants: measurements in the pattern's order, and the sizes that have spots. */
export function askedOfApplicants({ pattern, places, document, agreement }: PublishedFacts): AskedOfApplicants {
  const sizes = pattern.sizes.filter(({ id }) => (ownValue(places, id)?.wanted ?? 0) > 0);
  return {
    body: document.bodyAsked.map((id) => askedMeasurement(pattern, { id, decides: document.fitBy.includes(id) })),
    sizes: sizes.map((size) => offeredSize(pattern, size, document.fitBy)),
    agreement,
    minimumAge: document.notice?.minimumAge ?? YOUNGEST_AGE,
  };
}

function askedMeasurement(
  pattern: PatternDocument,
  { id, decides }: Pick<AskedMeasurement, "id" | "decides">,
): AskedMeasurement {
  const lengths = pattern.sizes.flatMap(({ body }) => ownValue(body, id) ?? []);
  const explained = pattern.bodyMeasurements?.find((measurement) => measurement.id === id);
  const usual = Object.values(BODY).find((measurement) => measurement.id === id);
  return {
    ...{ id, decides },
    label: bodyLabel(pattern, id),
    how: explained?.how ?? usual?.how ?? "",
    // If no size has this measurement, any length is accepted.
    fromCm: lengths.length === 0 ? 0 : Math.min(...lengths),
    toCm: lengths.length === 0 ? Infinity : Math.max(...lengths),
  };
}

/** A body measurement's name: the pattern's own, the usual one, or its id. */
export function bodyLabel({ bodyMeasurements }: PatternDocument, id: string): string {
  const usual: { readonly label: string } | undefined = Object.values(BODY).find(
    (measurement) => measurement.id === id,
  );
  return bodyMeasurements?.find((measurement) => measurement.id === id)?.label ?? usual?.label ?? id;
}

function offeredSize(
  pattern: PatternDocument,
  { id, label, body }: PatternDocument["sizes"][number],
  fitBy: readonly string[],
): OfferedSize {
  const words = fitBy.flatMap((measurement) => {
    const cm = ownValue(body, measurement);
    return cm === undefined
      ? []
      : [`${bodyLabel(pattern, measurement).toLowerCase()} ${formatLength(cm, "cm")} (${formatLength(cm, "in")})`];
  });
  return { id, label, body: words.join(", ") };
}
