import { fitFindings } from "@/engine/gaps";
import type { LengthUnit } from "@/engine/units";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { fitAdvice } from "../fit-advice";
import type { LoadedAnalysis } from "../loaders";
import { proposals } from "../proposals";
import type { PanelCall } from "./cell-panel";
import { NothingNamed } from "./nothing-named";
import { ProposalCard } from "./proposal-card";
import { ProposalForm } from "./proposal-form";

interface ChangesViewProps {
  readonly analysis: LoadedAnalysis;
  readonly call: PanelCall;
  readonly unit: LengthUnit;
  /** The newest revision's number. */
  readonly baseNumber: number;
  readonly formKey: string;
}

/** What the test says should be changed: each cause to take or leave, and what else the testers felt. */
export function ChangesView({ analysis, call, unit, baseNumber, formKey }: ChangesViewProps) {
  const { document, output } = analysis;
  const found = proposals({ call: document, output, unit });
  return (
    <>
      {call.mayEdit || found.length === 0 ? null : (
        <Notice>You may look at what is proposed. Only the pattern’s owner or an editor may take it.</Notice>
      )}
      {found.length === 0 ? (
        <NothingNamed analysis={analysis} call={call} unit={unit} />
      ) : (
        <Section
          title={
            found.length === 1
              ? "One thing to change"
              : `${numberWord(found.length)} things to change, the surest first`
          }
          intro="Each is one number or one place in the instructions that would explain what came out otherwise than promised. Take it or leave it."
        >
          {call.mayEdit ? (
            <ProposalForm callId={call.callId} {...{ baseNumber, formKey }} proposals={found} />
          ) : (
            <ol className="grid gap-5">
              {found.map((proposal, at) => (
                <ProposalCard key={proposal.sentence} {...{ proposal, at }} chosen={null} />
              ))}
            </ol>
          )}
        </Section>
      )}
      <FitAdvice {...{ analysis, call }} />
    </>
  );
}

function numberWord(count: number): string {
  return ["No", "One", "Two", "Three"][count] ?? String(count);
}

function FitAdvice({ analysis, call }: Pick<ChangesViewProps, "analysis" | "call">) {
  const { document, output } = analysis;
  const advice = fitFindings(document, output.cells).map((finding) => fitAdvice(finding, document.pattern));
  if (advice.length === 0) return null;
  return (
    <Section
      title="On size, and yet it does not sit right"
      intro="Here the numbers are right and the fit is not. That asks for another ease, not for another count."
    >
      <ul className="grid gap-3">
        {advice.map(({ says, does }) => (
          <li key={says} className="numbers rounded-sheet border border-line bg-sheet p-5 wrap-anywhere">
            <p className="font-serif text-lg leading-snug">{says}</p>
            <p className="mt-2">
              {does}{" "}
              {call.mayEdit ? (
                <a href={`/patterns/${call.patternId}/edit`} className="text-link">
                  Change its ease
                </a>
              ) : null}
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
