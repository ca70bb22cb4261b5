import type { Metadata } from "next";
import { loadCall } from "@/features/calls/loaders";
import { titlesUnder } from "@/server/titles-under";

export async function generateMetadata({ params }: LayoutProps<"/calls/[callId]">): Promise<Metadata> {
  // Whoever has no part in it is told so by the page itself.
  const loaded = await loadCall((await params).callId).catch(() => null);
  return loaded === null ? {} : { title: titlesUnder(loaded.call.title) };
}

/** Pages of a call draw their own frame; each proves access itself. */
export default function CallLayout({ children }: LayoutProps<"/calls/[callId]">) {
  return children;
}
