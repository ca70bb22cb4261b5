import type { Metadata } from "next";

/**
 * Titles of all pages below a pattern or a call: `Gaps · Saltmarsh Tee · Sizewright`.
 *
 * @param name whatever people called it, also where it holds the mark that stands for a page's own title.
 */
export function titlesUnder(name: string): NonNullable<Metadata["title"]> {
  const under = `${name.replaceAll("%s", "% s")} · Sizewright`;
  return { template: `%s · ${under}`, default: under };
}
