import type { Metadata } from "next";
import { loadLinkedChoice } from "@/features/testing/reminders/choice-loaders";
import { RemindersView } from "@/features/testing/reminders/reminders-view";

export const metadata: Metadata = { title: "Reminders", robots: { index: false, follow: false } };

export default async function RemindersRoute({ params }: PageProps<"/reminders/[link]">) {
  const { link } = await params;
  return <RemindersView link={link} chosen={await loadLinkedChoice(link)} />;
}
