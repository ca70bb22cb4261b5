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
