import { ChoiceLinks } from "@/ui/choice-links";
import type { BoardCounts } from "../../application-board";
import { WORD_WORDS } from "../../apply-words";
import { listAddress, type ListQuery } from "../../list-query";

interface ApplicationFiltersProps {
  readonly callId: string;
  readonly query: ListQuery;
  readonly counts: BoardCounts;
}

const WORDS = ["all", "undecided", "yes", "maybe", "no", "withdrawn"] as const;

/** How many there are of each kind, each a way to see those alone. */
export function ApplicationFilters({ callId, query, counts }: ApplicationFiltersProps) {
  const to = (changed: Partial<ListQuery>) => listAddress(callId, { ...query, page: 1, ...changed });
  return (
    <div className="mb-6 space-y-3">
      <Labelled label="By your word">
        <ChoiceLinks
          label="By your word"
          choices={WORDS.filter((word) => word !== "withdrawn" || counts.byWord.withdrawn > 0).map((word) => ({
            href: to({ word }),
            label: `${WORD_WORDS[word]} ${counts.byWord[word]}`,
            current: query.word === word,
          }))}
        />
      </Labelled>
      <Labelled label="By size within reach">
        <ChoiceLinks
          label="By size within reach"
          choices={[
            { href: to({ size: undefined }), label: "Any", current: query.size === undefined },
            ...counts.bySize.map(({ size, label, count }) => ({
              href: to({ size }),
              label: `${label} ${count}`,
              current: query.size === size,
            })),
          ]}
        />
      </Labelled>
    </div>
  );
}

function Labelled({ label, children }: { readonly label: string; readonly children: React.ReactNode }) {
  return (
    <div className="flex flex-wrap items-center gap-x-4 gap-y-1.5">
      <span aria-hidden="true" className="text-sm text-soft sm:w-36">
        {label}
      </span>
      {children}
    </div>
  );
}
