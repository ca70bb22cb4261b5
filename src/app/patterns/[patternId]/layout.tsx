import type { Metadata } from "next";
import { loadPattern } from "@/features/patterns/loaders";
import { titlesUnder } from "@/server/titles-under";

export async function generateMetadata({ params }: LayoutProps<"/patterns/[patternId]">): Promise<Metadata> {
  // People without access get their answer from the page itself.
  const loaded = await loadPattern((await params).patternId).catch(() => null);
  return loaded === null ? {} : { title: titlesUnder(loaded.revision.document.name) };
}

/** Pages of a pattern draw their own frame; each checks access itself. */
export default function PatternLayout({ children }: LayoutProps<"/patterns/[patternId]">) {
  return children;
}
