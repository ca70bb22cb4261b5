import type { PatternDocument } from "../pattern";
import { BODY } from "../trade-tables";
import type { ListedSize } from "./read-size-list";
import { uniqueSlug } from "./slug";

/**
 * Members of a pattern document for sizes that a person listed.
 *
 * @param sizes in the order they are to stand in.
 * @param bodyLabel what the body measurement is called; one that the published tables know gets their id and their words.
 */
export function sizesOfList(
  sizes: readonly ListedSize[],
  bodyLabel: string,
): Required<Pick<PatternDocument, "bodyMeasurements" | "sizes" | "sizeBy">> {
  const label = bodyLabel.trim();
  const known = Object.values(BODY).find((body) => body.label.toLowerCase() === label.toLowerCase());
  const id = known?.id ?? uniqueSlug(label, new Set());
  const taken = new Set<string>();
  return {
    bodyMeasurements: [{ id, label: known?.label ?? label, how: known?.how ?? "" }],
    sizes: sizes.map((size) => ({
      id: uniqueSlug(`size ${size.label}`, taken),
      label: size.label,
      body: { [id]: size.cm },
    })),
    sizeBy: id,
  };
}
