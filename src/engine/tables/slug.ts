const MAX_LENGTH = 40;
const FALLBACK = "x";

/**
 * An id made from a label that is not taken yet; the new id is added to `taken`.
 *
 * @param label a person's words, of any letters and length.
 * @param taken ids of the same list so far.
 * @returns a document id: `[a-z][a-z0-9-]{0,39}`, not `all`, as close to the label as possible; numbered if it would not be unique.
 */
export function uniqueSlug(label: string, taken: Set<string>): string {
  const base = slug(label);
  let id = base;
  for (let number = 2; taken.has(id); number += 1) {
    const ending = `-${number}`;
    id = base.slice(0, MAX_LENGTH - ending.length) + ending;
  }
  taken.add(id);
  return id;
}

function slug(label: string): string {
  const plain = label.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  const hyphened = plain.replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");
  const started = /^[a-z]/.test(hyphened) ? hyphened : `${FALLBACK}-${hyphened}`;
  const cut = started.slice(0, MAX_LENGTH).replace(/-$/, "");
  return cut === "all" ? "all-of-it" : cut;
}
