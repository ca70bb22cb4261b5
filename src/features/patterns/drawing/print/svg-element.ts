import { escapeXml } from "@/server/escape-xml";

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
function hundredths(value: number): string {
  return String(Math.round(value * 100) / 100 || 0);
}
