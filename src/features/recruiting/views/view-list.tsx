import { dayWords } from "@/ui/moment-copy";
import type { DataView, ViewKind } from "./view-data";

const KIND_WORDS: Readonly<Record<ViewKind, string>> = {
  page: "your page",
  measurements: "your measurements",
  photos: "your photos",
};
/** All are in what can be downloaded. */
const MOST_SHOWN = 60;

/** Who looked at a person's data, by day. */
export function ViewList({ views, timeZone }: { readonly views: readonly DataView[]; readonly timeZone: string }) {
  if (views.length === 0) return <p>Nobody has looked at it in the last year.</p>;
  const lines = viewLines(views, timeZone);
  const more = lines.length - MOST_SHOWN;
  return (
    <>
      <ul className="grid gap-1.5">
        {lines.slice(0, MOST_SHOWN).map(({ day, viewer, kinds }) => (
          <li key={`${day} ${viewer ?? ""}`} className="wrap-anywhere">
            <span className="text-soft numbers">{day}</span>:{" "}
            {viewer === null ? "somebody whose account is deleted" : <bdi>{viewer}</bdi>} looked at {listed(kinds)}.
          </li>
        ))}
      </ul>
      {more > 0 ? (
        <p className="mt-3 text-soft">
          {more === 1 ? "1 earlier day is" : `${more} earlier days are`} in the download.
        </p>
      ) : null}
    </>
  );
}

interface ViewLine {
  readonly day: string;
  readonly viewer: string | null;
  readonly kinds: readonly ViewKind[];
}

/** One line a day and viewer. */
function viewLines(views: readonly DataView[], timeZone: string): ViewLine[] {
  const lines = new Map<string, ViewLine>();
  for (const { viewer, kind, seenAt } of views) {
    const day = dayWords(seenAt, timeZone);
    const key = `${day} ${viewer ?? ""}`;
    const kinds: readonly ViewKind[] = lines.get(key)?.kinds ?? [];
    lines.set(key, { day, viewer, kinds: kinds.includes(kind) ? kinds : [...kinds, kind] });
  }
  return [...lines.values()];
}

function listed(kinds: readonly ViewKind[]): string {
  const words = kinds.map((kind) => KIND_WORDS[kind]);
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;
}
