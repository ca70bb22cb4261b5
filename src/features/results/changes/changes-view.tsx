import Link from "next/link";
import type { Carrier } from "@/engine/gaps";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import type { Asking } from "../asking";
import { carrierSentence } from "../carrier-copy";
import { AskCarriers } from "../gaps/ask-carriers";
import { mostMoved } from "../most-moved";
import { fitBoard } from "../fit/fit-board";
import { easeWords, fitSentence } from "../fit/fit-copy";
import type { Results } from "../loaders";
import { proposals } from "./proposals";
import type { PageParts } from "../schema";
import type { PanelCall } from "../gaps/cell-panel";
import { NothingNamed } from "./nothing-named";
import { ProposalCard } from "./proposal-card";
import { ProposalForm } from "./proposal-form";

interface ChangesViewProps {
  readonly results: Results<PageParts<"changes">>;
  readonly call: PanelCall;
  readonly unit: LengthUnit;
  /** The newest revision's number. */
  readonly baseNumber: number;
  readonly formKey: string;
  /** Of testers on whom a cause rests, by id. */
  readonly names: ReadonlyMap<string, string>;
  readonly asking: Asking;
}

/** What the test suggests changing: each cause to accept or leave, and what testers say about the fit. */
export function ChangesView({ results, call, unit, baseNumber, formKey, names, asking }: ChangesViewProps) {
  const found = proposals({ ...results, unit });
  const { pattern } = results;
  const carried = found.flatMap(({ cause, sentence }, index) => {
    const { restsOn } = cause;
    const words = carrierSentence(restsOn, { pattern, names });
    return words === null ? [] : [{ index, sentence, words, restsOn, measurement: mostMoved(cause, pattern) }];
  });
  return (
    <>
      {call.mayEdit || found.length === 0 ? null : (
        <Notice>You can see the proposals. Only the pattern’s owner or an editor can accept them.</Notice>
      )}
      {found.length === 0 ? (
        <NothingNamed {...{ results, call, unit }} />
      ) : (
        <Section
          title={
            found.length === 1
              ? "One thing to change"
              : `${numberWord(found.length)} things to change, most certain first`
          }
          intro="Each is one number, or one place in the instructions, that would explain what came out different from the pattern. Accept it or leave it."
        >
          <CarriedCauses {...{ carried, asking }} />
          {call.mayEdit ? (
            <ProposalForm callId={call.callId} {...{ baseNumber, formKey }} proposals={found} />
          ) : (
            <ol className="grid gap-5">
              {found.map((proposal, index) => (
                <ProposalCard key={proposal.sentence} {...{ proposal, index }} chosen={null} />
              ))}
            </ol>
          )}
        </Section>
      )}
      <FitAdvice {...{ results, call, unit }} />
    </>
  );
}

interface CarriedCausesProps {
  readonly carried: readonly {
    readonly index: number;
    readonly sentence: string;
    readonly words: string;
    readonly restsOn: readonly Carrier[];
    readonly measurement: string | undefined;
  }[];
  readonly asking: Asking;
}

/** The causes that a single tester carries, above the form, which can hold no other. */
function CarriedCauses({ carried, asking }: CarriedCausesProps) {
  if (carried.length === 0) return null;
  return (
    <ul className="mb-5 grid gap-3">
      {carried.map(({ index, sentence, words, restsOn, measurement }) => (
        <li key={index} className="numbers rounded-md border-l-4 border-line-strong bg-band px-4 py-3 wrap-anywhere">
          <p>{sentence}</p>
          <p className="font-semibold">{words} Ask before you change anything.</p>
          <AskCarriers {...{ restsOn, asking, measurement }} />
        </li>
      ))}
    </ul>
  );
}

function numberWord(count: number): string {
  return ["No", "One", "Two", "Three"][count] ?? String(count);
}

function FitAdvice({ results, call, unit }: Pick<ChangesViewProps, "results" | "call" | "unit">) {
  const { pattern } = results;
  const advice = fitBoard(results).flatMap((area) =>
    area.findings.map((finding) => ({
      sentence: fitSentence(finding, area, pattern),
      ease: easeWords(finding, { area, pattern, unit }),
    })),
  );
  if (advice.length === 0) return null;
  return (
    <div className="mt-12">
      <Section title="Sizes that don’t fit">
        <ul className="grid gap-3">
          {advice.map(({ sentence, ease }) => (
            <li key={sentence} className="numbers rounded-sheet border border-line bg-sheet p-5 wrap-anywhere">
              <p className="font-serif text-lg leading-snug">{sentence}</p>
              <p className="mt-2">
                {ease}{" "}
                <Link href={callPageHref(call.callId, "fit")} className="text-link">
                  See the fit notes
                </Link>
                {call.mayEdit ? (
                  <>
                    {" "}
                    or{" "}
                    <Link href={`/patterns/${call.patternId}/edit`} className="text-link">
                      change the ease
                    </Link>
                  </>
                ) : null}
                .
              </p>
            </li>
          ))}
        </ul>
      </Section>
    </div>
  );
}
