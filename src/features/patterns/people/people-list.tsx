import { Day } from "@/ui/day";
import type { PeoplePage } from "./people-loaders";
import type { Person } from "./people-data";
import { HelperControls } from "./helper-controls";
import { LeavePattern } from "./leave-pattern";
import { ROLE_WORDS } from "./role-copy";

/** Who has access to the pattern, and what the viewer can change. */
export function PeopleList({ page }: { readonly page: PeoplePage }) {
  const { people, patternId, viewer, role } = page;
  return (
    <ul className="rounded-sheet border border-line bg-sheet shadow-sheet">
      {people.map((person) => {
        const isViewer = person.accountId === viewer.accountId;
        return (
          <li key={person.accountId} className="border-b border-line px-5 py-4 last:border-b-0">
            <PersonLine person={person} isViewer={isViewer} />
            {role === "owner" && person.role !== "owner" ? (
              <HelperControls patternId={patternId} helper={person} role={person.role} />
            ) : null}
            {role !== "owner" && isViewer ? (
              <LeavePattern patternId={patternId} hasConflictingDraft={person.hasConflictingDraft} />
            ) : null}
          </li>
        );
      })}
    </ul>
  );
}

function PersonLine({ person: { name, role, since }, isViewer }: { person: Person; isViewer: boolean }) {
  return (
    <div className="flex flex-wrap items-baseline justify-between gap-x-6 gap-y-0.5">
      <h3 className="min-w-0 wrap-anywhere">
        <bdi>{name}</bdi>
        {isViewer ? <span className="font-sans text-base font-normal text-soft"> (you)</span> : null}
      </h3>
      <p className="text-soft">
        <span className="font-semibold text-ink">{ROLE_WORDS[role]}</span>, since <Day at={since} />
      </p>
    </div>
  );
}
