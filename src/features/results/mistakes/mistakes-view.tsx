import type { PatternDocument } from "@/engine/pattern";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { EmptyState } from "@/ui/empty-state";
import type { PageOfList } from "@/ui/page-number";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import { madeDecision, type MadeDecisions } from "./decision-copy";
import { doubtWords, itemWords, standingWords } from "./mistakes-copy";
import { MistakesTable, type MistakesRow } from "./mistakes-table";

interface MistakesViewProps {
  readonly pattern: PatternDocument;
  /** Those on this page. */
  readonly items: readonly FlaggedItem[];
  /** How many there are on all pages. */
  readonly all: number;
  readonly list: PageOfList;
  /** By ids of testers. */
  readonly names: ReadonlyMap<string, string>;
  readonly decisions: MadeDecisions;
  readonly callId: string;
  readonly unit: LengthUnit;
  readonly mayEdit: boolean;
}

/** Every flagged reading, swatch and weight: what looks wrong, its status, and a way to change that. */
export function MistakesView({ items, all, list, callId, mayEdit, ...row }: MistakesViewProps) {
  if (all === 0)
    return (
      <EmptyState title="No possible mistakes">
        <p>Every measurement, swatch and yarn weight is close to what was expected, and nobody has excluded one.</p>
      </EmptyState>
    );
  return (
    <Section
      title={all === 1 ? "One number to check" : `${all} numbers to check`}
      intro="A number that a common mistake would explain is excluded automatically until you include it. Nothing is deleted."
      actions={
        <a href={`/calls/${callId}/mistakes.csv`} className="text-link text-sm">
          Download CSV
        </a>
      }
    >
      <MistakesTable rows={items.map((item) => rowOf(item, row))} decidesIn={mayEdit ? callId : null} unit={row.unit} />
      <Paging
        label="Pages of possible mistakes"
        page={list.page}
        pages={list.pages}
        hrefOf={(page) => `/calls/${callId}/mistakes?page=${page}`}
      />
    </Section>
  );
}

function rowOf(
  item: FlaggedItem,
  { pattern, names, decisions, unit }: Pick<MistakesViewProps, "pattern" | "names" | "decisions" | "unit">,
): MistakesRow {
  const { tester, part, position, counts, decision } = item;
  return {
    ...{ tester, part, position, counts, decision },
    name: names.get(tester) ?? tester,
    size: pattern.sizes.find(({ id }) => id === item.size)?.label ?? item.size,
    gave: itemWords(item, pattern, unit),
    doubt: doubtWords(item, unit),
    standing: standingWords(item, madeDecision(decisions, item), unit),
  };
}
