"use client";

import Link from "next/link";
import { useActionState } from "react";
import { fieldOf } from "@/engine/reporting";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { saveReportForm } from "../draft-actions";
import type { SaveAnswer } from "../save-answer";

/** Says in one tap, with and without JavaScript, that the pattern was followed wherever no number is entered. */
export function ConfirmCounts({ testerId }: { readonly testerId: string }) {
  const [answer, save, isSaving] = useActionState<SaveAnswer | null, FormData>(saveReportForm, null);
  return (
    <form action={save} className="flex flex-wrap items-center gap-x-5 gap-y-3">
      <input type="hidden" name="testerId" value={testerId} />
      <input type="hidden" name="was" value="{}" />
      <Button type="submit" look="quiet" name={fieldOf.asWritten} value="yes" disabled={isSaving}>
        <span className="min-w-0 wrap-anywhere">
          {isSaving ? "Saving …" : "I followed the pattern everywhere except where I enter a number"}
        </span>
      </Button>
      <Link
        href={`/testing/${testerId}/counts`}
        prefetch={false}
        className="text-link inline-flex min-h-11 items-center"
      >
        Enter your counts
      </Link>
      <ActionFailure
        failed={answer?.status === "failed" ? { says: answer.message } : undefined}
        className="basis-full"
      />
    </form>
  );
}
