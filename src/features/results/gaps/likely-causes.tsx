import Link from "next/link";
import type { PatternDocument } from "@/engine/pattern";
import type { NamedCause } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { Section } from "@/ui/section";
import type { Asking } from "../asking";
import { carrierSentence } from "../carrier-copy";
import { causeSentence, explainedWords, rivalWords } from "../cause-copy";
import { mostMoved } from "../most-moved";
import { explainedBy, type GapBoard } from "./gap-board";
import { tellApartSentence } from "../changes/proposal-copy";
import type { Show } from "../schema";
import { AskCarriers } from "./ask-carriers";
import { CauseMark } from "./cause-mark";

interface LikelyCausesProps {
  readonly causes: readonly NamedCause[];
  readonly pattern: PatternDocument;
  readonly board: GapBoard;
  readonly unit: LengthUnit;
  readonly show: Show;
  readonly callId: string;
  readonly addressOf: (show: Show) => string;
  /** Of testers on whom a finding rests, by id. */
  readonly names: ReadonlyMap<string, string>;
  readonly asking: Asking;
}

/** The likely causes of the differences, best first, each with a link to its cells. */
export function LikelyCauses({ causes, callId, ...rest }: LikelyCausesProps) {
  if (causes.length === 0) return null;
  return (
    <Section
      title="Likely causes"
      actions={
        <Link href={callPageHref(callId, "method")} className="text-link text-sm">
          How causes are found
        </Link>
      }
    >
      <ol className={`grid gap-3 ${COLUMNS[causes.length] ?? "lg:grid-cols-3"}`}>
        {causes.map((cause, index) => (
          <LikelyCause
            key={`${cause.kind} ${cause.id} ${cause.size ?? ""} ${cause.direction ?? ""}`}
            {...{ cause, ...rest }}
            number={index + 1}
          />
        ))}
      </ol>
      <p className="mt-4">
        <ButtonLink href={callPageHref(callId, "changes")}>See suggested changes</ButtonLink>
      </p>
    </Section>
  );
}

/** One card spans the page. */
const COLUMNS: Readonly<Record<number, string>> = { 1: "", 2: "lg:grid-cols-2" };

interface LikelyCauseProps extends Omit<LikelyCausesProps, "causes" | "callId"> {
  readonly cause: NamedCause;
  readonly number: number;
}

function LikelyCause({ cause, number, pattern, board, unit, show, addressOf, names, asking }: LikelyCauseProps) {
  const cells = board.rows.flatMap((row) => row.cells).filter(({ causes }) => causes.includes(number)).length;
  const own = number === 1 ? "cause-1" : number === 2 ? "cause-2" : "cause-3";
  const carriers = carrierSentence(cause.restsOn, { pattern, names });
  const tied = cause.rivals.filter((rival) => rival.tied);
  const others = cause.rivals.filter((rival) => !rival.tied);
  return (
    <li
      id={`cause-${number}`}
      className="numbers scroll-mt-4 rounded-sheet border border-line border-l-4 border-l-thread bg-sheet px-4 py-3"
    >
      <p className="font-serif text-lg leading-snug">
        <CauseMark number={number} /> {causeSentence(cause, pattern, unit)}
      </p>
      <p className="mt-1.5 text-sm text-soft">
        {explainedWords(explainedBy(board, number))}{" "}
        {cells === 0 ? null : (
          <Link
            href={addressOf(show === own ? undefined : own)}
            scroll={false}
            aria-current={show === own ? "true" : undefined}
            className="text-link whitespace-nowrap"
          >
            {show === own ? "Show all again" : `Show its ${cells === 1 ? "cell" : `${cells} cells`}`}
          </Link>
        )}
      </p>
      {carriers === null ? null : <p className="mt-1.5 text-sm font-semibold">{carriers}</p>}
      <AskCarriers restsOn={cause.restsOn} measurement={mostMoved(cause, pattern)} {...{ asking }} />
      {tied.length === 0 ? null : (
        <p className="mt-1.5 text-sm text-soft">
          It could equally be {tied.map((rival) => rivalWords(rival, pattern)).join(", or ")}.{" "}
          {tellApartSentence([cause, ...tied], pattern)}
        </p>
      )}
      {others.length === 0 ? null : (
        <details className="mt-1.5 text-sm text-soft">
          <summary className="text-link inline-block cursor-pointer">Nearly as likely</summary>
          <p className="mt-1">{others.map((rival) => rivalWords(rival, pattern)).join("; ")}.</p>
        </details>
      )}
    </li>
  );
}
