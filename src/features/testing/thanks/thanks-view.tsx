import { callPageHref } from "@/features/calls/call-pages";
import type { PatternDocument } from "@/engine/pattern";
import { ChoiceLinks } from "@/ui/choice-links";
import { CopyText } from "@/ui/copy-text";
import { EmptyState } from "@/ui/empty-state";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import { messageHref } from "../progress/progress-query";
import { RewardBar } from "./reward-bar";
import { RewardList } from "./reward-list";
import type { Thanks } from "./thanks-data";
import type { CreditOrder } from "./thanks-schema";

interface ThanksViewProps {
  readonly callId: string;
  readonly thanks: Thanks;
  /** How testers would like to be named, in the order wanted. */
  readonly names: readonly string[];
  readonly order: CreditOrder;
  readonly pattern: PatternDocument;
  readonly mayEdit: boolean;
}

const ORDERS: Readonly<Record<CreditOrder, string>> = {
  name: "By name",
  size: "By size",
  report: "By date of report",
};

/** What was promised, who got it, and the names for the finished pattern. */
export function ThanksView({ callId, thanks, names, order, pattern, mayEdit }: ThanksViewProps) {
  const { testers, counts, promised, page, pages } = thanks;
  if (counts.all === 0)
    return (
      <EmptyState title="Nobody to thank yet">
        <p>Testers appear here once they have sent a report, with what you promised them.</p>
      </EmptyState>
    );
  const hrefOf = (query: string) => `${callPageHref(callId, "thanks")}?${query}`;
  return (
    <>
      <Section title="What testers get">
        {promised === "" ? (
          <p className="mb-4 text-soft">The tester call promises nothing in particular.</p>
        ) : (
          <blockquote className="mb-4 border-l-2 border-line-strong pl-4 whitespace-pre-wrap wrap-anywhere">
            {promised}
          </blockquote>
        )}
        <p className="numbers mb-4">
          {counts.patternSent} of {counts.all} have the finished pattern; {counts.named}{" "}
          {counts.named === 1 ? "is" : "are"} named.
        </p>
        {mayEdit ? <RewardBar callId={callId} messageHref={messageHref(callId)} /> : null}
        <RewardList {...{ callId, testers, pattern, mayEdit }} />
        <Paging label="Pages of testers" {...{ page, pages }} hrefOf={(to) => hrefOf(`page=${to}&order=${order}`)} />
      </Section>
      <Section
        title="Names for the pattern"
        intro={
          counts.unsaid === 0
            ? "As each of them would like to be named; who would not is left out."
            : `As each of them would like to be named. ${counts.unsaid === 1 ? "1 tester has" : `${counts.unsaid} testers have`} not said yet and ${counts.unsaid === 1 ? "is" : "are"} left out.`
        }
      >
        {names.length === 0 ? (
          <p className="text-soft">Nobody has said yet that they would like to be named.</p>
        ) : (
          <>
            <div className="mb-4">
              <ChoiceLinks
                label="Order of the names"
                choices={Object.entries(ORDERS).map(([value, label]) => ({
                  href: hrefOf(`page=${page}&order=${value}`),
                  label,
                  current: value === order,
                }))}
              />
            </div>
            <CopyText id="names" label="Names" text={`Tested by ${names.join(", ")}.`} button="Copy names" />
          </>
        )}
      </Section>
    </>
  );
}
