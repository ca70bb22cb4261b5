import { useSyncExternalStore, type MouseEvent } from "react";
import { Button } from "@/ui/button";
import { Select } from "@/ui/field";
import { beginningOf, type ShownBlock } from "../shown-block";

interface PassageListProps {
  readonly blocks: readonly ShownBlock[];
  /** The page that opens a form; null if nothing can be sent. */
  readonly sayHref: string | null;
  /** The marked passage. */
  readonly own: string | null;
  readonly onMark: (passage: string) => void;
}

/** The passages as a list, for whoever reads with a keyboard or without scripts. */
export function PassageList({ blocks, sayHref, own, onMark }: PassageListProps) {
  const hasScripts = useSyncExternalStore(
    () => () => undefined,
    () => true,
    () => false,
  );
  if (sayHref === null && !hasScripts) return null;
  const mark = ({ currentTarget: { form } }: MouseEvent<HTMLButtonElement>) => {
    const passage = form === null ? null : new FormData(form).get("place");
    if (typeof passage !== "string") return;
    onMark(passage);
    document.getElementById(`place-${passage}`)?.scrollIntoView();
  };
  return (
    <>
      <p className="max-w-2xl text-sm text-soft">
        {hasScripts ? "Tap a passage to mark where you are" : "Choose a passage from the list"}
        {sayHref === null ? "." : ", to ask about it or to report that something went wrong."}
      </p>
      <details className="mb-6 max-w-2xl">
        <summary className="inline-flex min-h-11 items-center text-link">List of passages</summary>
        <form method="get" action={sayHref ?? undefined} className="mt-1 grid gap-3 border-l-4 border-line-strong pl-4">
          <label htmlFor="passage" className="font-semibold">
            Passage
          </label>
          <Select id="passage" name="place" key={own} defaultValue={own ?? undefined}>
            {blocks.map((block) => (
              <option key={block.key} value={block.key}>
                {beginningOf(block)}
              </option>
            ))}
          </Select>
          <div className="flex flex-wrap gap-2">
            {hasScripts ? (
              <Button type="button" look="quiet" onClick={mark}>
                I am here
              </Button>
            ) : null}
            {sayHref === null ? null : (
              <>
                <Button type="submit" look="quiet" name="say" value="question">
                  Ask about this passage
                </Button>
                <Button type="submit" look="quiet" name="say" value="trouble">
                  Something went wrong there
                </Button>
              </>
            )}
          </div>
        </form>
      </details>
    </>
  );
}
