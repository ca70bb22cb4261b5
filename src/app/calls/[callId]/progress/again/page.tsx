import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { callPageHref } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { isMailOn } from "@/features/mail/mail-status";
import { readListing } from "@/features/recruiting/listing/data";
import { earlierTesters, followedCall } from "@/features/testing/again/again-data";
import { AgainForm } from "@/features/testing/again/again-form";
import { EmptyState } from "@/ui/empty-state";
import { Notice } from "@/ui/notice";

const TITLE = "Invite earlier testers";

export async function generateMetadata({ params }: PageProps<"/calls/[callId]/progress/again">): Promise<Metadata> {
  const loaded = await loadCall((await params).callId).catch(() => null);
  return { title: loaded?.mayEdit ? TITLE : { absolute: `${TITLE} · Sizewright` } };
}

export default async function AgainPage({ params }: PageProps<"/calls/[callId]/progress/again">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, revision, mayEdit, call } = loaded;
  if (!mayEdit || call.status !== "open") notFound();
  const followed = await followedCall(access);
  if (followed === null) notFound();
  const [people, listing] = await Promise.all([earlierTesters(access, revision.document), readListing(access)]);
  const labels = new Map(revision.document.sizes.map(({ id, label }) => [id, label]));
  return (
    <CallPage
      loaded={loaded}
      page="progress"
      title={TITLE}
      intro={
        <>
          Testers of{" "}
          <Link href={callPageHref(followed.callId, "overview")} className="text-link">
            {followed.title}
          </Link>
          , each in the size they made.{" "}
          {isMailOn() ? "They get their link by e-mail." : "You send them their links yourself, from Progress."}
        </>
      }
    >
      {listing === null ? (
        <Notice title="This test has no dates yet">
          <p>
            Whoever you invite now sees no dates.{" "}
            <Link href={callPageHref(callId, "setUp")} className="text-link">
              Publish the tester call first
            </Link>
            , or tell them yourself.
          </p>
        </Notice>
      ) : null}
      {people.length === 0 ? (
        <EmptyState title="Everybody is invited">
          <p>Nobody of the earlier test is left to invite: they are here already, or they stopped.</p>
        </EmptyState>
      ) : (
        <AgainForm
          callId={callId}
          people={people.map(({ id, size, contact, reportedAt }) => ({
            ...{ testerId: id, name: contact?.name ?? "", size: labels.get(size) ?? size },
            hasReported: reportedAt !== null,
          }))}
        />
      )}
    </CallPage>
  );
}
