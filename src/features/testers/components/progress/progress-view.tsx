import Link from "next/link";
import type { PatternDocument, Places } from "@/engine/pattern";
import { own } from "@/engine/pattern";
import { ButtonLink } from "@/ui/button";
import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { Progress } from "../../progress-state";
import { needWords, sinceWords, STATE_WORDS } from "./progress-words";
import { SizeBoard } from "./size-board";

interface ProgressViewProps {
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly places: Places;
  readonly people: readonly Progress[];
  readonly unit: "cm" | "in";
  readonly mayEdit: boolean;
  /** Size that is looked at; null for all. */
  readonly size: string | null;
  readonly page: number;
}

const MOST_ON_A_PAGE = 50;

/** Who is where, those first who need the designer. */
export function ProgressView(props: ProgressViewProps) {
  const { callId, pattern, places, people, mayEdit, size, page } = props;
  if (people.length === 0)
    return (
      <div className="mb-12">
        {" "}
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
          <p>Once places are sent, everybody stands here with where she is, and those who need you come first.</p>
        </EmptyState>
      </div>
    );
  const base = `/calls/${callId}/progress`;
  const sizes = pattern.sizes.filter(({ id }) => people.some(({ row }) => row.size === id));
  const chosen = size === null ? people : people.filter(({ row }) => row.size === size);
  const shown = chosen.slice((page - 1) * MOST_ON_A_PAGE, page * MOST_ON_A_PAGE);
  const pages = Math.ceil(chosen.length / MOST_ON_A_PAGE);
  const address = (at: number) => `${base}?${new URLSearchParams({ ...(size ? { size } : {}), page: String(at) })}`;
  return (
    <>
      <Section title="By size">
        <SizeBoard pattern={pattern} places={places} people={people} callId={callId} mayEdit={mayEdit} />
      </Section>
      <Section title="Who is where" intro="Those who need you come first.">
        <div className="mb-4">
          <ChoiceLinks
            label="Size"
            choices={[
              { href: base, label: "All sizes", current: size === null },
              ...sizes.map(({ id, label }) => ({ href: `${base}?size=${id}`, label, current: id === size })),
            ]}
          />
        </div>
        <PeopleTable {...props} people={shown} />
        {pages > 1 ? (
          <div className="mt-4">
            <ChoiceLinks
              label="Page"
              choices={Array.from({ length: pages }, (_, at) => ({
                href: address(at + 1),
                label: String(at + 1),
                current: at + 1 === page,
              }))}
            />
          </div>
        ) : null}
      </Section>
    </>
  );
}

/** A table at a desk; on a phone each row is a card of its own. */
function PeopleTable({ callId, pattern, people, unit }: ProgressViewProps) {
  return (
    <TableFrame label="Who is where">
      <table className={`${TABLE} max-sm:block max-sm:[&_td]:block max-sm:[&_td]:py-0.5 max-sm:[&_tbody]:block`}>
        <thead className={`${TABLE_HEAD} max-sm:sr-only`}>
          <tr>
            <th scope="col">Who</th>
            <th scope="col">Size</th>
            <th scope="col">Where</th>
            <th scope="col">What needs you</th>
          </tr>
        </thead>
        <tbody>
          {people.map((progress) => (
            <PersonRow key={progress.row.testerId} {...{ callId, pattern, progress, unit }} />
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

function PersonRow({
  callId,
  pattern,
  progress,
  unit,
}: Pick<ProgressViewProps, "callId" | "pattern" | "unit"> & { readonly progress: Progress }) {
  const { row, state, needs } = progress;
  const label = own(Object.fromEntries(pattern.sizes.map((size) => [size.id, size.label])), row.size) ?? row.size;
  return (
    <tr className={`${TABLE_ROW} align-top max-sm:block max-sm:py-2`}>
      <th scope="row" className="min-w-0 font-semibold wrap-anywhere max-sm:block sm:max-w-80">
        <Link
          href={`/calls/${callId}/progress/${row.testerId}`}
          prefetch={false}
          className="text-link inline-flex min-h-6 items-center"
        >
          <bdi className="line-clamp-2">{row.name ?? row.code}</bdi>
        </Link>
        {row.note ? <span className="block line-clamp-2 text-sm font-normal text-soft">{row.note}</span> : null}
      </th>
      <td className="font-serif text-lg wrap-anywhere">
        <span className="font-sans text-sm text-soft sm:hidden">Size </span>
        {label}
      </td>
      <td>
        {STATE_WORDS[state]} <span className="text-sm text-soft numbers">{sinceWords(progress)}</span>
      </td>
      <td className="wrap-anywhere">
        {needs.length === 0 ? <span className="text-soft max-sm:hidden">nothing</span> : null}
        <ul>
          {needs.map((need) => (
            <li key={need} className="font-semibold">
              <span aria-hidden="true" className="text-thread">
                ▲{" "}
              </span>
              {needWords(need, progress, unit)}
            </li>
          ))}
        </ul>
      </td>
    </tr>
  );
}
