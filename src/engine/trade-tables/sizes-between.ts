import type { BodyTable } from "./body-table";

/**
 * Ids of a table's sizes from one to another, both included, whichever of the two is the larger.
 *
 * @param first a size's id; the table's smallest where it is none of the table's. @param last the same, else the largest.
 */
export function sizesBetween({ sizes }: BodyTable, first: string | undefined, last: string | undefined): string[] {
  const indexOf = (id: string | undefined, otherwise: number) => {
    const found = sizes.findIndex((size) => size.id === id);
    return found === -1 ? otherwise : found;
  };
  const [from, to] = [indexOf(first, 0), indexOf(last, sizes.length - 1)];
  return sizes.slice(Math.min(from, to), Math.max(from, to) + 1).map(({ id }) => id);
}
