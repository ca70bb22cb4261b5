import type { CountNumbers } from "./count-numbers";
import { MAX_COUNTS } from "./max-counts";

interface CountChoiceProps {
  readonly counts: readonly CountNumbers[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: string[]) => void;
}

/** Chooses the counts that a correction changes; without scripts, a button asks the page for their numbers. */
export function CountChoice({ counts, chosen, onChange }: CountChoiceProps) {
  if (counts.length === 0) return null;
  const isFull = chosen.length >= MAX_COUNTS;
  const tick = (id: string, isTicked: boolean) =>
    onChange(isTicked ? [...chosen, id] : chosen.filter((one) => one !== id));
  return (
    <form action="#corrections" className="mt-3 max-w-2xl">
      <fieldset className="mb-4">
        <legend className="mb-1 font-semibold">Numbers that change (optional)</legend>
        <p className="text-sm text-soft">
          Choose the counts. Below, you then enter what the text says and what is right, size by size.
          {isFull ? ` One correction holds ${MAX_COUNTS} counts; publish another for more.` : ""}
        </p>
        <div className="flex max-h-72 flex-wrap gap-x-6 overflow-y-auto">
          {counts.map(({ id, label }) => (
            <label key={id} className="flex min-h-11 min-w-0 cursor-pointer items-center gap-2.5">
              <input
                type="checkbox"
                name="count"
                value={id}
                checked={chosen.includes(id)}
                disabled={isFull && !chosen.includes(id)}
                onChange={(event) => tick(id, event.currentTarget.checked)}
                className="size-5 shrink-0 accent-thread"
              />
              <bdi className="min-w-0 wrap-anywhere">{label}</bdi>
            </label>
          ))}
        </div>
      </fieldset>
      <noscript>
        <button type="submit" className="button button-quiet mb-4">
          Show these numbers
        </button>
      </noscript>
    </form>
  );
}
