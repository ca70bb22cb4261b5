import Link from "next/link";
import { Notice } from "@/ui/notice";
import type { OwnApplication } from "../../own-data";
import { ownState } from "../../own-state";
import { momentWords } from "@/ui/moment-words";

interface OwnStateNoticeProps {
  readonly application: OwnApplication;
  readonly timeZone: string;
  readonly size: string;
}

/** How the application stands, and what she can do. */
export function OwnStateNotice({ application, timeZone, size }: OwnStateNoticeProps) {
  const { designer, createdAt, withdrawnAt, tester } = application;
  const her = <bdi>{designer}</bdi>;
  switch (ownState(application)) {
    case "sent":
      return (
        <Notice tone="done" title="Thank you: your application is sent">
          {her} has it since {momentWords(createdAt, { timeZone, edge: "time" })}.
        </Notice>
      );
    case "withdrawn":
      return (
        <Notice title="You have withdrawn your application">
          Since {momentWords(withdrawnAt ?? createdAt, { timeZone, edge: "time" })}. {her} sees your name and that you
          withdrew, and none of your measurements.
        </Notice>
      );
    case "offered":
      return (
        <Notice tone="done" title={`A place in size ${size} is offered to you`}>
          {her} sends you a link by which you accept or decline it.
        </Notice>
      );
    case "too late":
      return (
        <Notice title={`A place in size ${size} was offered to you`}>
          The time to answer is over. If you would still like it, write to {her}.
        </Notice>
      );
    case "declined":
      return <Notice title="You have declined the place that was offered to you">Nothing more is to be done.</Notice>;
    case "taken back":
      return <Notice title="The offer of a place was taken back">If that surprises you, write to {her}.</Notice>;
    case "testing":
    case "stopped":
      return (
        <Notice tone="done" title={`You test size ${size}`}>
          <Link href={`/testing/${tester?.testerId}`} className="text-link">
            To your page as a tester
          </Link>
        </Notice>
      );
  }
}
