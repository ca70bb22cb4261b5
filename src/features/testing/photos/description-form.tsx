"use client";

import { useActionState, useId } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { MAX_PHOTO_NOTE_LENGTH } from "./photo-views";
import { describeSamplePhoto } from "./sample-actions";

interface DescriptionFormProps {
  readonly patternId: string;
  readonly photoId: string;
  /** The description that is stored; "" for none. */
  readonly note: string;
  /** What is said where there is none. */
  readonly usual: string;
}

/** A description of a photo, which screen readers read aloud. */
export function DescriptionForm({ patternId, photoId, note, usual }: DescriptionFormProps) {
  const [answer, save, isSaving] = useActionState(describeSamplePhoto, undefined);
  const id = useId();
  return (
    <form action={save} className="mt-1">
      <input type="hidden" name="patternId" value={patternId} />
      <input type="hidden" name="photoId" value={photoId} />
      <label htmlFor={id} className="block text-sm">
        Description for people who can’t see it
      </label>
      <div className="mt-1 flex flex-wrap gap-2">
        <input
          key={note}
          id={id}
          name="note"
          dir="auto"
          defaultValue={note}
          placeholder={usual}
          maxLength={MAX_PHOTO_NOTE_LENGTH}
          className="control min-h-11 min-w-0 flex-1 basis-40"
        />
        <Button type="submit" look="quiet" disabled={isSaving}>
          {isSaving ? "Saving …" : "Save"}
          <span className="sr-only"> description</span>
        </Button>
      </div>
      <p role="status" className="text-sm empty:hidden">
        {answer?.status === "saved" && !isSaving ? "Saved." : null}
      </p>
      <ActionFailure failed={answer?.status === "failed" ? answer : undefined} />
    </form>
  );
}
