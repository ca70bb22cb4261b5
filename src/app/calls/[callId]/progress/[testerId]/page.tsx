import type { Metadata } from "next";
import Link from "next/link";
import { CallPage } from "@/features/calls/components/call-page";
import { callPageHref } from "@/features/calls/call-pages";
import { loadCall } from "@/features/calls/loaders";
import { PersonView } from "@/features/testing/progress/person-view";
import { loadPerson } from "@/features/testing/progress/progress-loaders";

export const metadata: Metadata = { title: "A tester" };

export default async function TesterProgressPage({ params }: PageProps<"/calls/[callId]/progress/[testerId]">) {
  const { callId, testerId } = await params;
  const loaded = await loadCall(callId);
  const { access, revision, viewer, mayEdit } = loaded;
  const now = new Date();
  const person = await loadPerson(access, { testerId, pattern: revision.document, now });
  const { row } = person.progress;
  const size = revision.document.sizes.find(({ id }) => id === row.size)?.label ?? row.size;
  const intro = (
    <>
      Size <bdi>{size}</bdi>
      {row.email ? (
        <>
          ,{" "}
          <a href={`mailto:${row.email}`} className="text-link">
            {row.email}
          </a>
        </>
      ) : null}{" "}
      ·{" "}
      <Link href={callPageHref(callId, "progress")} className="text-link">
        all testers
      </Link>
    </>
  );
  return (
    <CallPage loaded={loaded} page="progress" title={row.name ?? row.code} intro={intro}>
      <PersonView callId={callId} {...person} unit={viewer.unit} mayEdit={mayEdit} now={now} />
    </CallPage>
  );
}
