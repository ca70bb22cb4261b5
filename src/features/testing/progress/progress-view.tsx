import type { PatternDocument, Places } from "@/engine/pattern";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import type { ProgressList } from "./progress-list-data";
import { messageHref, messageToListedHref, NEEDS, progressHref, type Need, type ProgressQuery } from "./progress-query";
import type { Progress } from "./tester-status-data";
import { COUNTED_COLUMNS, countedSizes } from "./counted-sizes";
import { ActOnSeveral } from "./act-on-several";
import { PeopleTable, type ListedPerson } from "./people-table";
import { actionOf, heardWords, NEED_FILTER_WORDS, needWords, nextDueWords, stageWords } from "./progress-copy";
import { SizeBoard } from "./size-board";

interface ProgressViewProps {
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly places: Places;
  readonly list: ProgressList;
  readonly query: ProgressQuery;
  readonly unit: "cm" | "in";
  readonly now: Date;
  readonly mayEdit: boolean;
}

/** The testers of a call, those who need attention first. */
export function ProgressView(props: ProgressViewProps) {
  const { callId, pattern, places, list, query, mayEdit } = props;
  if (list.counts.length === 0) return <NoTesters {...{ callId, mayEdit }} />;
  return (
    <>
      <Section title="Testers" intro="Those who need your attention come first.">
        <Filters {...{ callId, pattern, list, query }} />
        {list.people.length === 0 ? (
          <p className="text-soft">No tester matches these filters.</p>
        ) : (
          <>
            {mayEdit ? (
              <ActOnSeveral callId={callId} messageHref={messageHref(callId)} toListed={toListed(props)} />
            ) : null}
            <PeopleTable
              base={progressHref(callId, {})}
              people={list.people.map((progress) => listedPerson(progress, props))}
              mayEdit={mayEdit}
            />
          </>
        )}
        <Paging
          label="Pages of testers"
          page={list.page}
          pages={list.pages}
          hrefOf={(page) => progressHref(callId, { ...query, page })}
        />
      </Section>
      <Section title="By size">
        <SizeBoard
          placesHref={mayEdit ? callPageHref(callId, "sizes") : null}
          columns={COUNTED_COLUMNS}
          sizes={countedSizes({ pattern, places, counts: list.counts })}
        />
      </Section>
    </>
  );
}

/** The way to a message to all who match the filters. */
function toListed({ callId, query }: ProgressViewProps): { readonly href: string; readonly label: string } {
  const label = query.needs === undefined ? "Write to everyone testing" : "Write to everyone listed";
  return { href: messageToListedHref(callId, query), label };
}

function NoTesters({ callId, mayEdit }: Pick<ProgressViewProps, "callId" | "mayEdit">) {
  return (
    <div className="mb-12">
      <EmptyState
        title="No testers yet"
        actions={
          mayEdit ? (
            <>
              <ButtonLink href={callPageHref(callId, "sizes")}>Assign sizes</ButtonLink>
              <ButtonLink href={`/calls/${callId}/progress/add`} look="quiet">
                Invite somebody directly
              </ButtonLink>
            </>
          ) : null
        }
      >
        <p>
          Once you have sent invitations, all testers are listed here with their progress, those who need your attention
          first.
        </p>
      </EmptyState>
    </div>
  );
}

/** Filters by size and by what needs attention. */
function Filters({ callId, pattern, list, query }: Pick<ProgressViewProps, "callId" | "pattern" | "list" | "query">) {
  const sizes = pattern.sizes.filter(({ id }) => list.counts.some(({ size }) => size === id));
  const needs = NEEDS.filter((need) => need === query.needs || (list.needs[need] ?? 0) > 0);
  const to = (changed: Partial<ProgressQuery>) => progressHref(callId, { ...query, page: 1, ...changed });
  return (
    <div className="mb-4 space-y-3">
      <ChoiceLinks
        label="Size"
        choices={[
          { href: to({ size: undefined }), label: "All sizes", current: query.size === undefined },
          ...sizes.map(({ id, label }) => ({ href: to({ size: id }), label, current: id === query.size })),
        ]}
      />
      {needs.length === 0 ? null : (
        <ChoiceLinks
          label="Needs attention"
          choices={[
            { href: to({ needs: undefined }), label: "Everyone", current: query.needs === undefined },
            { href: to({ needs: "any" }), label: "All who need you", current: query.needs === "any" },
            ...needs.map((need) => ({
              href: to({ needs: need }),
              label: `${NEED_FILTER_WORDS[need]} ${list.needs[need] ?? 0}`,
              current: need === query.needs,
            })),
          ]}
        />
      )}
    </div>
  );
}

/** A row of the table, in words. */
function listedPerson(
  progress: Progress,
  { callId, pattern, unit, now }: Pick<ProgressViewProps, "callId" | "pattern" | "unit" | "now">,
): ListedPerson {
  const { row, needs } = progress;
  const words = (need: Need) => needWords(need, progress, unit);
  return {
    id: row.testerId,
    name: row.name ?? row.code,
    note: row.note,
    size: pattern.sizes.find(({ id }) => id === row.size)?.label ?? row.size,
    stage: stageWords(progress),
    heard: heardWords(progress),
    due: nextDueWords(progress, now),
    needs: needs.filter((need) => need !== "off gauge").map(words),
    remarks: needs.filter((need) => need === "off gauge").map(words),
    action: actionOf(progress, callId),
  };
}
