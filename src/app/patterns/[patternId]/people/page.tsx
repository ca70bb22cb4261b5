import type { Metadata } from "next";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { PeopleView } from "@/features/patterns/people/people-view";
import { loadPeople } from "@/features/patterns/people/people-loaders";

export const metadata: Metadata = { title: "People" };

export default async function PeoplePage({ params }: PageProps<"/patterns/[patternId]/people">) {
  const page = await loadPeople((await params).patternId);
  return (
    <PatternFrame page={page} tab="people">
      <PeopleView page={page} now={new Date()} />
    </PatternFrame>
  );
}
