import type { AnswerGroup } from "./correction-standings-data";

const LABELS: Readonly<Record<AnswerGroup["standing"], string>> = {
  unanswered: "No answer yet",
  following: "Will follow it",
  changed: "Ripped back and changed it",
  kept: "Keeping the old",
  absent: "Not in their version",
  told: "Finished, told only",
  read: "Finished, have read it",
};

/** The testers whom a correction concerns by what they answered, counted and named. */
export function AnswerGroups({ groups }: { readonly groups: readonly AnswerGroup[] }) {
  if (groups.length === 0)
    return <p className="mt-2 text-sm font-semibold">No tester whom it concerns has started yet.</p>;
  return (
    <dl className="numbers mt-3 border-t border-line">
      {groups.map(({ standing, many, names }) => (
        <div
          key={standing}
          className="border-b border-line py-1.5 last:border-b-0 sm:grid sm:grid-cols-[15rem_1fr] sm:gap-4"
        >
          <dt className={standing === "unanswered" ? "font-semibold text-thread" : "font-semibold"}>
            {LABELS[standing]}: {many}
          </dt>
          <dd className="min-w-0 wrap-anywhere">
            {names.map((name, index) => (
              <span key={`${index} ${name}`}>
                {index === 0 ? "" : ", "}
                <bdi>{name}</bdi>
              </span>
            ))}
            {many > names.length ? ` and ${many - names.length} more` : ""}
          </dd>
        </div>
      ))}
    </dl>
  );
}
