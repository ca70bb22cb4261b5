import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { OwnApplication } from "./own-data";
import { ownState } from "./own-state";
import { momentWords } from "@/ui/moment-copy";

interface OwnStateNoticeProps {
  readonly application: OwnApplication;
  readonly timeZone: string;
  readonly size: string;
}

/** The state of the application, and what the applicant can do. */
export function OwnStateNotice({ application, timeZone, size }: OwnStateNoticeProps) {
  const { designer, createdAt, withdrawnAt, tester } = application;
  const designerName = <bdi>{designer}</bdi>;
  switch (ownState(application)) {
    case "sent":
      return (
        <Notice tone="done" title="Thank you: your application is sent">
          {designerName} received it on {momentWords(createdAt, { timeZone, edge: "time" })}.
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
    case "testing":
    case "stopped":
      return (
        <Notice tone="done" title={`You are testing size ${size}`}>
          <Link href={`/testing/${tester?.testerId}`} className="text-link">
            Your test
          </Link>
        </Notice>
      );
  }
}
