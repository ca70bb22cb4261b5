import { ChoiceLinks } from "@/ui/choice-links";
import type { BoardCounts } from "./application-board";
import { DECISION_LABELS } from "../apply/apply-copy";
import { listAddress, type ListQuery } from "./list-query";

interface ApplicationFiltersProps {
  readonly callId: string;
  readonly query: ListQuery;
  readonly counts: BoardCounts;
}

const DECISIONS = ["all", "undecided", "yes", "maybe", "no", "withdrawn"] as const;

/** The number of applications of each kind, each a link that filters the list. */
export function ApplicationFilters({ callId, query, counts }: ApplicationFiltersProps) {
  const to = (changed: Partial<ListQuery>) => listAddress(callId, { ...query, page: 1, ...changed });
  return (
    <div className="mb-6 space-y-3">
      <Labelled label="Your decision">
        <ChoiceLinks
          label="Your decision"
          choices={DECISIONS.filter((decision) => decision !== "withdrawn" || counts.byDecision.withdrawn > 0).map(
            (decision) => ({
              href: to({ decision }),
              label: `${DECISION_LABELS[decision]} ${counts.byDecision[decision]}`,
              current: query.decision === decision,
            }),
          )}
        />
      </Labelled>
      <Labelled label="Fits size">
        <ChoiceLinks
          label="Fits size"
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
