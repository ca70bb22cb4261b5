import type { Metadata } from "next";
import Link from "next/link";
import { CallPage } from "@/features/calls/components/call-page";
import { callPageHref } from "@/features/calls/call-pages";
import { loadCall } from "@/features/calls/loaders";
import { AskedSection } from "@/features/testing/asked/asked-section";
import { questionsAboutNumbers } from "@/features/testing/asked/asked-data";
import { loadReportVerdicts } from "@/features/results/mistakes/report-verdicts";
import { readTheirTest } from "@/features/testing/progress/own-days-data";
import { TheirTestSection } from "@/features/testing/progress/their-test";
import { PersonView } from "@/features/testing/progress/person-view";
import { loadPerson } from "@/features/testing/progress/progress-loaders";
import { noteSeen } from "@/features/recruiting/views/seen-data";
import { UnderNumber } from "./under-number";

export const metadata: Metadata = { title: "A tester" };

export default async function TesterProgressPage({ params }: PageProps<"/calls/[callId]/progress/[testerId]">) {
  const { callId, testerId } = await params;
  const loaded = await loadCall(callId);
  const { access, revision, viewer, mayEdit } = loaded;
  const now = new Date();
  const person = await loadPerson(access, { testerId, pattern: revision.document, now });
  const { row } = person.progress;
  await noteSeen(access, { kind: "page", testers: [testerId] });
  const [verdicts, asked, test] = await Promise.all([
    loadReportVerdicts(loaded, row.code),
    questionsAboutNumbers(access, testerId),
    readTheirTest(access, testerId),
  ]);
  const isAtWork = row.acceptedAt !== null && row.stoppedAt === null && loaded.call.status === "open";
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
      <PersonView
        {...{ callId, ...person, mayEdit, now }}
        unit={viewer.unit}
        asked={
          <AskedSection
            {...{ callId, asked, mayEdit }}
            isOpen={loaded.call.status === "open"}
            context={person.received?.report.context}
            timeZone={person.progress.timeZone}
          />
        }
        theirTest={
          mayEdit && test !== null && row.acceptedAt !== null && loaded.call.status === "open" ? (
            <TheirTestSection sends={{ callId, testerId }} test={test} timeZone={person.progress.timeZone} />
          ) : null
        }
        under={({ name, ...number }) => (
          <UnderNumber
            {...{ callId, testerId, number, name, verdicts, mayEdit }}
            unit={viewer.unit}
            mayAsk={mayEdit && isAtWork}
            askedBefore={asked.length}
          />
        )}
      />
    </CallPage>
  );
}
