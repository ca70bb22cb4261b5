import type { Metadata } from "next";
import { loadCall } from "@/features/calls/loaders";
import { titlesUnder } from "@/server/titles-under";

export async function generateMetadata({ params }: LayoutProps<"/calls/[callId]">): Promise<Metadata> {
  // People without access get their answer from the page itself.
  const loaded = await loadCall((await params).callId).catch(() => null);
  return loaded === null ? {} : { title: titlesUnder(loaded.call.title) };
}

/** Pages of a call draw their own frame; each checks access itself. */
export default function CallLayout({ children }: LayoutProps<"/calls/[callId]">) {
  return children;
}
