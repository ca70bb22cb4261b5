"use client";

import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { Button } from "@/ui/button";
import { Field, TextArea, describedBy } from "@/ui/field";
import { saveAsRevision, discardDraftEdits } from "../actions";
import { writeBackup } from "./draft-backup";
import { useEditing, useEditingStore } from "./editing";
import type { DraftStatus } from "./draft-saver";
import { ToFix } from "./to-fix";

const UNSENT = "This did not reach Sizewright. Your edits are still here. Check your connection and try again.";

/** Whether the edits are saved, and the two things to do with them: save a revision, or discard. */
export function SaveBar() {
  const store = useEditingStore();
  const { patternId, isEdited, baseNumber, status, send, changes, faults, questions } = useEditing(
    ...(["patternId", "isEdited", "baseNumber", "status", "send", "changes", "faults", "questions"] as const),
  );
  const router = useRouter();
  const [open, setOpen] = useState<"revision" | "discard" | null>(null);
  const [reason, setReason] = useState("");
  const [says, setSays] = useState<string | null>(null);
  const [isBusy, start] = useTransition();
  const [isListOpen, setListOpen] = useState(false);
  const isEmpty = !isEdited;
  const openRemarks = faults.size + [...questions.values()].filter(({ meant }) => !meant).length;

  const save = () =>
    start(async () => {
      const version = await send();
      if (version === null) return;
      const edits = { content: store.getState().draft, version, baseNumber, reason };
      const saved = await saveAsRevision(patternId, edits).catch(() => ({ status: "failed" as const, says: UNSENT }));
      if (saved.status !== "saved") return setSays(saved.says);
      writeBackup(patternId, null);
      router.push(`/patterns/${patternId}/revisions/${saved.number}`);
    });
  const discard = () =>
    start(async () => {
      const version = await send();
      if (version === null) return;
      const gone = await discardDraftEdits(patternId, version).catch(() => ({
        status: "failed" as const,
        says: UNSENT,
      }));
      if (gone.status !== "gone") return setSays(gone.says);
      writeBackup(patternId, null);
      router.refresh();
    });

  return (
    <div className="sticky bottom-0 z-2 -mx-4 border-t border-line-strong bg-sheet px-4 py-3 shadow-sheet sm:-mx-8 sm:px-8">
      {isListOpen && openRemarks > 0 ? <ToFix /> : null}
      <div className="flex flex-wrap items-center justify-between gap-3">
        <div className="flex flex-wrap items-center gap-x-3 text-sm">
          <p role="status">
            {summary(changes.length)} <span className="text-soft">{statusWords(status)}</span>
          </p>
          {openRemarks === 0 ? null : (
            <button
              type="button"
              aria-expanded={isListOpen}
              onClick={() => setListOpen(!isListOpen)}
              className="text-link min-h-8 font-semibold text-thread"
            >
              ▲ {openRemarks} to fix
            </button>
          )}
        </div>
        {isEmpty ? null : (
          <div className="flex flex-wrap gap-3">
            <Button look="plain" onClick={() => setOpen(open === "discard" ? null : "discard")}>
              Discard
            </Button>
            <Button onClick={() => setOpen(open === "revision" ? null : "revision")}>Save as revision</Button>
          </div>
        )}
      </div>
      {says && open ? (
        <p role="alert" className="mt-2 font-semibold text-thread">
          ▲ {says}
        </p>
      ) : null}
      {open === "revision" && !isEmpty ? (
        <form
          noValidate
          className="mt-3 max-w-2xl"
          onSubmit={(event) => {
            event.preventDefault();
            save();
          }}
        >
          <Field id="reason" label="What you changed, and why" hint="Everyone sees this with the revision.">
            <TextArea
              id="reason"
              rows={2}
              value={reason}
              aria-describedby={describedBy("reason")}
              onChange={({ target }) => setReason(target.value)}
            />
          </Field>
          <Button type="submit" disabled={isBusy}>
            {isBusy ? "Saving…" : `Save revision ${baseNumber + 1}`}
          </Button>
        </form>
      ) : null}
      {open === "discard" && !isEmpty ? (
        <p className="mt-3 flex flex-wrap items-center gap-3">
          All edits since revision {baseNumber} will be lost.
          <Button look="quiet" disabled={isBusy} onClick={discard}>
            Discard edits
          </Button>
        </p>
      ) : null}
    </div>
  );
}

function summary(changes: number): string {
  return changes === 0 ? "No changes." : `${changes} ${changes === 1 ? "change" : "changes"}.`;
}

const CLOCK = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });

function statusWords(status: DraftStatus): string {
  switch (status.kind) {
    case "resting":
      return "";
    case "saving":
      return "Saving…";
    case "saved":
      return `Saved ${CLOCK.format(status.at)}.`;
    case "late":
      return "Someone else saved first. Loading their version…";
    case "unsent":
      return status.says;
  }
}
