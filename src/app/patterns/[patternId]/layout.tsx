import type { Metadata } from "next";
import { loadPattern } from "@/features/patterns/loaders";
import { titlesUnder } from "@/server/titles-under";

export async function generateMetadata({ params }: LayoutProps<"/patterns/[patternId]">): Promise<Metadata> {
  // Whoever has no part in it is told so by the page itself.
  const loaded = await loadPattern((await params).patternId).catch(() => null);
  return loaded === null ? {} : { title: titlesUnder(loaded.revision.document.name) };
}

/** Pages of a pattern draw their own frame; each proves access itself. */
export default function PatternLayout({ children }: LayoutProps<"/patterns/[patternId]">) {
  return children;
}
