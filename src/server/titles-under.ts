import type { Metadata } from "next";

/**
 * Titles of all pages below a pattern or a call: `Differences · Saltmarsh Tee · Sizewright`.
 *
 * @param name the name that people gave it, even if it contains the placeholder for a page's own title.
 */
export function titlesUnder(name: string): NonNullable<Metadata["title"]> {
  const under = `${name.replaceAll("%s", "% s")} · Sizewright`;
  return { template: `%s · ${under}`, default: under };
}
