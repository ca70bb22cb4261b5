import { formatPath, type Fault, type PathPart } from "./faults";
import { ownValue } from "./own-value";

/** A fault with its path in parts. */
export interface PlacedFault {
  readonly path: readonly PathPart[];
  readonly says: string;
}

/** Collects invalid references: unknown or duplicate ids, and records that lack a size. */
export class ReferenceChecker {
  readonly placed: PlacedFault[] = [];

  get faults(): Fault[] {
    return this.placed.map(({ path, says }) => ({ path: formatPath(path), says }));
  }

  add(path: readonly PathPart[], says: string): void {
    this.placed.push({ path, says });
  }

  /** Ids must be unique in their list. */
  unique(path: readonly PathPart[], items: readonly { readonly id: string }[]): Set<string> {
    const seen = new Set<string>();
    items.forEach(({ id }, index) => {
      if (seen.has(id)) this.add([...path, index, "id"], `“${id}” appears twice in this list.`);
      seen.add(id);
    });
    return seen;
  }

  /** The id must be one of `known`. */
  exists(path: readonly PathPart[], id: string, known: ReadonlySet<string>, what: string): void {
    if (!known.has(id)) this.add(path, `there is no ${what} “${id}”.`);
  }

  /** Every key of the record must be one of `known`. */
  keysExist(
    path: readonly PathPart[],
    record: Readonly<Record<string, unknown>>,
    known: ReadonlySet<string>,
    what: string,
  ): void {
    for (const id of Object.keys(record)) this.exists([...path, id], id, known, what);
  }

  /** A record by size must name every size and nothing else; a plain number applies to all sizes. */
  everySize(
    path: readonly PathPart[],
    value: number | Readonly<Record<string, unknown>>,
    sizes: ReadonlySet<string>,
  ): void {
    if (typeof value === "number") return;
    this.keysExist(path, value, sizes, "size");
    for (const size of sizes) {
      if (ownValue(value, size) === undefined)
        this.add([...path, size], "is missing; a record by size names every size.");
    }
  }
}
