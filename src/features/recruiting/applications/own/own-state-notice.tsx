import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { OwnApplication } from "./own-data";
import type { OwnState } from "./own-state";
import { momentWords } from "@/ui/moment-copy";

interface OwnStateNoticeProps {
  readonly application: OwnApplication;
  readonly state: OwnState;
  readonly timeZone: string;
  readonly size: string;
}

/** The state of the application, and what the applicant can do. */
export function OwnStateNotice({ application, state, timeZone, size }: OwnStateNoticeProps) {
  const { designer, createdAt, withdrawnAt, tester, pattern } = application;
  const designerName = <bdi>{designer}</bdi>;
  switch (state) {
    case "sent":
      return (
        <Notice tone="done" title="Thank you: your application is sent">
          {designerName} received it on {momentWords(createdAt, { timeZone, edge: "time" })}.
        </Notice>
      );
    case "waiting":
      return (
        <Notice title="Nobody can apply any more: sizes are being assigned">
          {designerName} has your application. When you are offered a spot, they send you a link, and you see it here
          too.
        </Notice>
      );
    case "no spot yet":
      return (
        <Notice title="The test has started, and you have no spot so far">
          More people applied than there are spots. If one opens up, {designerName} can still offer it to you; you see
          it here too.
        </Notice>
      );
    case "not chosen":
      return (
        <Notice title="You were not chosen for this test">
          Thank you for applying. {designerName} could not give you a spot this time. Nothing more is needed from you;
          you can delete your application below.
        </Notice>
      );
    case "closed":
      return (
        <Notice title="This test is closed">
          It ended without a spot for you. Thank you for applying to test <bdi>{pattern.name}</bdi>. You can delete your
          application below.
        </Notice>
      );
    case "withdrawn":
      return (
        <Notice title="You have withdrawn your application">
          On {momentWords(withdrawnAt ?? createdAt, { timeZone, edge: "time" })}. {designerName} sees your name and that
          you withdrew, but not your measurements.
        </Notice>
      );
    case "offered":
      return (
        <Notice tone="done" title={`You are offered a spot in size ${size}`}>
          {designerName} will send you a link to accept or decline it.
        </Notice>
      );
    case "too late":
      return (
        <Notice title={`You were offered a spot in size ${size}`}>
          The time to answer is over. If you would still like it, write to {designerName}.
        </Notice>
      );
    case "declined":
      return <Notice title="You have declined the spot you were offered">There is nothing more to do.</Notice>;
    case "taken back":
      return <Notice title="The offer of a spot was withdrawn">If that surprises you, write to {designerName}.</Notice>;
    case "stopped":
      return (
        <Notice title={`You stopped testing size ${size}`}>
          <Link href={`/testing/${tester?.testerId}`} className="text-link">
            Your test
          </Link>
        </Notice>
      );
    case "testing":
      return (
        <Notice tone="done" title={`You are testing size ${size}`}>
          <Link href={`/testing/${tester?.testerId}`} className="text-link">
            Your test
          </Link>
        </Notice>
      );
  }
}
