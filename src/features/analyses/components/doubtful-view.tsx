import type { PatternDocument } from "@/engine/pattern";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { madeDecision, type MadeDecisions } from "../decision-words";
import { doubtWords, itemWords, standingWords } from "../doubtful-words";
import { DecideButtons } from "./decide-buttons";

interface DoubtfulViewProps {
  readonly pattern: PatternDocument;
  readonly items: readonly FlaggedItem[];
  /** By ids of testers. */
  readonly names: ReadonlyMap<string, string>;
  readonly decisions: MadeDecisions;
  readonly callId: string;
  readonly unit: LengthUnit;
  readonly mayEdit: boolean;
}

/** Every reading, swatch and weight that is doubted: what is odd, what was done, and the way to undo it. */
export function DoubtfulView({ items, callId, ...row }: DoubtfulViewProps) {
  if (items.length === 0)
    return (
      <EmptyState title="Nothing is doubted">
        <p>No reading, swatch or weight of yarn is far from what was to be expected, and nobody has set one aside.</p>
      </EmptyState>
    );
  return (
    <Section
      title={items.length === 1 ? "One number to look at" : `${items.length} numbers to look at`}
      intro="Where a common slip explains a number, it is set aside until you say otherwise. Nothing is ever thrown away."
      actions={
        <a href={`/calls/${callId}/doubtful.csv`} className="text-link text-sm">
          As a CSV file
        </a>
      }
    >
      <TableFrame label="Doubtful numbers">
        <table className={`${TABLE} max-md:block`}>
          <thead className={`${TABLE_HEAD} max-md:sr-only`}>
            <tr>
              <th scope="col">Tester</th>
              <th scope="col">What she gave</th>
              <th scope="col">What is odd</th>
              <th scope="col">What was done</th>
            </tr>
          </thead>
          <tbody className="max-md:block">
            {items.map((item) => (
              <Row key={`${item.tester} ${item.part} ${item.position}`} {...{ ...row, item, callId }} />
            ))}
          </tbody>
        </table>
      </TableFrame>
    </Section>
  );
}

type RowProps = Omit<DoubtfulViewProps, "items"> & { readonly item: FlaggedItem };

function Row({ item, pattern, names, decisions, callId, unit, mayEdit }: RowProps) {
  const name = names.get(item.tester) ?? item.tester;
  const size = pattern.sizes.find(({ id }) => id === item.size)?.label ?? item.size;
  const words = itemWords(item, pattern, unit);
  return (
    <tr
      className={`${TABLE_ROW} align-top max-md:block max-md:px-2 max-md:py-3 max-md:[&>*]:block max-md:[&>*]:!py-0.5`}
    >
      <th scope="row" className="[overflow-wrap:anywhere]">
        {name} <span className="font-normal text-soft">({size})</span>
      </th>
      <td className="numbers">{words}</td>
      <td className="numbers">{doubtWords(item, unit)}</td>
      <td>
        <span className={item.counts ? "" : "font-semibold"}>{standingWords(item, madeDecision(decisions, item))}</span>
        {mayEdit ? (
          <DecideButtons
            {...{ callId, item }}
            name={`${name}, ${words}`}
            decision={item.decision}
            counts={item.counts}
          />
        ) : null}
      </td>
    </tr>
  );
}
