import Link from "next/link";
import type { PatternDocument, Places } from "@/engine/pattern";
import { ButtonLink } from "@/ui/button";
import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import { TableFrame } from "@/ui/table-frame";
import type { ProgressList } from "../../progress-list-data";
import { LISTED_NEEDS, progressHref, type ProgressQuery } from "../../progress-query";
import type { Progress } from "../../tester-status-data";
import { NEED_FILTER_WORDS, needWords, sinceWords, STATE_WORDS } from "./progress-words";
import { SizeBoard } from "./size-board";

interface ProgressViewProps {
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly places: Places;
  readonly list: ProgressList;
  readonly query: ProgressQuery;
  readonly unit: "cm" | "in";
  readonly mayEdit: boolean;
}

/** Who is where, those first who need the designer. */
export function ProgressView(props: ProgressViewProps) {
  const { callId, pattern, places, list, query, mayEdit } = props;
  if (list.counts.length === 0) return <NobodyTests {...{ callId, mayEdit }} />;
  return (
    <>
      <Section title="By size">
        <SizeBoard {...{ pattern, places, callId, mayEdit }} counts={list.counts} />
      </Section>
      <Section title="Who is where" intro="Those who need you come first.">
        <Filters {...{ callId, pattern, list, query }} />
        {list.people.length === 0 ? (
          <p className="text-soft">Nobody matches these filters.</p>
        ) : (
          <PeopleTable {...props} />
        )}
        <Paging
          label="Pages of testers"
          page={list.page}
          pages={list.pages}
          hrefOf={(page) => progressHref(callId, { ...query, page })}
        />
      </Section>
    </>
  );
}

function NobodyTests({ callId, mayEdit }: Pick<ProgressViewProps, "callId" | "mayEdit">) {
  return (
    <div className="mb-12">
      <EmptyState
        title="Nobody tests yet"
        actions={
          mayEdit ? (
            <>
              <ButtonLink href={`/calls/${callId}/places`}>Give places</ButtonLink>
              <ButtonLink href={`/calls/${callId}/progress/add`} look="quiet">
                Invite somebody by hand
              </ButtonLink>
            </>
          ) : null
        }
      >
        <p>Once places are sent, everybody is listed here with how far they are, and those who need you come first.</p>
      </EmptyState>
    </div>
  );
}

/** By size, and by what needs the designer. */
function Filters({ callId, pattern, list, query }: Pick<ProgressViewProps, "callId" | "pattern" | "list" | "query">) {
  const sizes = pattern.sizes.filter(({ id }) => list.counts.some(({ size }) => size === id));
  const needs = LISTED_NEEDS.filter((need) => need === query.needs || (list.needs[need] ?? 0) > 0);
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
          label="What needs you"
          choices={[
            { href: to({ needs: undefined }), label: "Everybody", current: query.needs === undefined },
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

/** A table at a desk; on a phone each row is a card of its own. */
function PeopleTable({ callId, pattern, list, unit }: ProgressViewProps) {
  const labels = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  return (
    <TableFrame label="Who is where">
      <table className="people-table">
        <thead>
          <tr>
            <th scope="col">Who</th>
            <th scope="col">Size</th>
            <th scope="col">Where</th>
            <th scope="col">What needs you</th>
          </tr>
        </thead>
        <tbody>
          {list.people.map((progress) => (
            <tr key={progress.row.testerId}>
              <Who {...{ callId, progress }} />
              <td data-label="Size">{labels.get(progress.row.size) ?? progress.row.size}</td>
              <td>
                {STATE_WORDS[progress.state]} <small>{sinceWords(progress)}</small>
              </td>
              <Needs {...{ progress, unit }} />
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

function Who({ callId, progress: { row } }: { readonly callId: string; readonly progress: Progress }) {
  return (
    <th scope="row">
      <Link href={`/calls/${callId}/progress/${row.testerId}`} prefetch={false}>
        <bdi>{row.name ?? row.code}</bdi>
      </Link>
      {row.note ? <small>{row.note}</small> : null}
    </th>
  );
}

function Needs({ progress, unit }: { readonly progress: Progress; readonly unit: "cm" | "in" }) {
  if (progress.needs.length === 0) return <td className="nothing">nothing</td>;
  return (
    <td>
      <ul className="needs">
        {progress.needs.map((need) => (
          <li key={need}>{needWords(need, progress, unit)}</li>
        ))}
      </ul>
    </td>
  );
}
