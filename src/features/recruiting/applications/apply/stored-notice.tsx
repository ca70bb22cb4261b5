"use client";

import { Button } from "@/ui/button";

/** Says that this browser stores what is typed and who could read it, and lets it be discarded. */
export function StoredNotice({ isStored, onDiscard }: { readonly isStored: boolean; readonly onDiscard: () => void }) {
  if (!isStored) return null;
  return (
    <div className="mb-8 flex flex-wrap items-center justify-between gap-x-6 gap-y-1 border-l-4 border-line-strong py-1 pl-4 text-sm text-soft">
      <p className="min-w-0 flex-1 basis-72">
        What you type is stored in this browser until you send it, so a reload loses nothing. Other people who use this
        device could read it.
      </p>
      <Button look="plain" onClick={onDiscard}>
        Discard what I typed
      </Button>
    </div>
  );
}
