import type { PatternDocument } from "@/engine/pattern";

/** A part of the body that the fit is asked about. @param area id of a body measurement, explained by the pattern or not. */
export function fitAreaOf(
  { bodyMeasurements = [], measurements }: PatternDocument,
  area: string,
): { readonly label: string; readonly isGirth: boolean } {
  const governing = measurements.filter(({ target }) => target && "body" in target && target.body === area);
  const label = bodyMeasurements.find(({ id }) => id === area)?.label ?? area.replaceAll("-", " ");
  return { label: `${label.charAt(0).toUpperCase()}${label.slice(1)}`, isGirth: governing.some(({ girth }) => girth) };
}

/** How close somebody likes a garment at an area. */
export function prefersChoices({ isGirth }: { readonly isGirth: boolean }) {
  return [
    { value: "-1", label: isGirth ? "closer" : "shorter" },
    { value: "0", label: "as the pattern intends" },
    { value: "1", label: isGirth ? "looser" : "longer" },
  ];
}
