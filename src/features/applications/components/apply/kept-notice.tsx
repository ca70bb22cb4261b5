"use client";

import { Button } from "@/ui/button";

/** That this browser keeps what is typed, who else could read it, and how to have it forgotten. */
export function KeptNotice({ isKept, onForget }: { readonly isKept: boolean; readonly onForget: () => void }) {
  if (!isKept) return null;
  return (
    <div className="mb-8 flex flex-wrap items-center justify-between gap-x-6 gap-y-1 border-l-4 border-line-strong py-1 pl-4 text-sm text-soft">
      <p className="min-w-0 flex-1 basis-72">
        What you type is kept in this browser until you send it, so that a reload loses nothing. Whoever else uses this
        device could read it.
      </p>
      <Button look="plain" onClick={onForget}>
        Forget what I typed
      </Button>
    </div>
  );
}
