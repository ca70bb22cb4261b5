/** Longer than usual names, and short enough for every file system. */
const LONGEST_PART = 60;

/**
 * The `content-disposition` of a file to save: a plain ASCII name, and the name as people wrote it.
 *
 * @param parts what the file is of, from the whole to the part: pattern, test, page. Any text; blank ones are left out.
 * @param extension without its dot.
 * @see RFC 6266, 4.3, and RFC 8187, 3.2 (formerly RFC 5987), for the encoding of `filename*`.
 */
export function attachment(parts: readonly string[], extension: string): string {
  const ascii = named(parts.map(asciiWords), "-");
  const whole = named(parts.map(readableWords), ", ");
  return `attachment; filename="${ascii}.${extension}"; filename*=UTF-8''${percentEncoded(`${whole}.${extension}`)}`;
}

function named(parts: readonly string[], between: string): string {
  return parts.filter((part) => part !== "").join(between) || "sizewright";
}

/** `Été à l’ombre` is `ete-a-l-ombre`. */
function asciiWords(part: string): string {
  const letters = part.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  return withoutEnds(letters.replace(/[^a-z0-9]+/g, "-").slice(0, LONGEST_PART), "-");
}

/** Without characters that file systems refuse, and without invisible marks that reverse the direction of a name. */
function readableWords(part: string): string {
  const spaced = part
    .toWellFormed()
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}"*/:<>?\\|]+/gu, " ")
    .replace(/\s+/g, " ");
  return withoutEnds([...spaced].slice(0, LONGEST_PART).join(""), " .");
}

function withoutEnds(text: string, marks: string): string {
  const isMark = (index: number) => marks.includes(text.charAt(index));
  let [from, to] = [0, text.length];
  while (from < to && isMark(from)) from += 1;
  while (to > from && isMark(to - 1)) to -= 1;
  return text.slice(from, to);
}

function percentEncoded(text: string): string {
  return encodeURIComponent(text).replace(/['()*!]/g, (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase()}`);
}
