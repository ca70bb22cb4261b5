/** Characters that XML 1.0 cannot represent. */
const NOT_XML = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g;

const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
};

/** People's words as text or attribute of an XML document. */
export function escapeXml(words: string): string {
  return words
    .toWellFormed()
    .replace(NOT_XML, "")
    .replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? "");
}

/**
 * One element.
 *
 * @param attributes escaped here; numbers to a hundredth.
 * @param content markup that is escaped already.
 */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  content = "",
): string {
  const written = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined ? [] : [` ${key}="${typeof value === "number" ? hundredths(value) : escapeXml(value)}"`],
  );
  return `<${name}${written.join("")}>${content}</${name}>`;
}

/** A number with at most two decimals. */
export function hundredths(value: number): string {
  return String(Math.round(value * 100) / 100 || 0);
}
