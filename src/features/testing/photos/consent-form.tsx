"use client";

import { useActionState, useState } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { saveConsent } from "./photo-actions";
import { PHOTO_USES, type PhotoUse } from "./photo-views";

interface ConsentFormProps {
  readonly testerId: string;
  readonly allowed: readonly PhotoUse[];
  /** "" where they would not be named, null until they have said. */
  readonly creditName: string | null;
  readonly isOfChild: boolean;
}

const LABELS: Readonly<Record<PhotoUse, string>> = {
  pattern_page: "On the pattern’s page",
  social_media: "On social media",
};

/** A tester says for what else their photos may be used. Nothing is allowed before they have said so. */
export function ConsentForm({ testerId, allowed, creditName, isOfChild }: ConsentFormProps) {
  const [failed, save, isSaving] = useActionState(saveConsent, undefined);
  const [ticked, setTicked] = useState(allowed);
  const isWithdrawing = allowed.some((use) => !ticked.includes(use));
  const isAllowingMore = ticked.some((use) => !allowed.includes(use));
  const isChanged = isWithdrawing || isAllowingMore;
  return (
    <form action={save} className="grid gap-3">
      <input type="hidden" name="testerId" value={testerId} />
      {PHOTO_USES.map((use) => (
        <label key={use} className="flex min-h-11 items-center gap-3">
          <input
            type="checkbox"
            name={use}
            value="yes"
            checked={ticked.includes(use)}
            onChange={({ target }) =>
              setTicked((now) => (target.checked ? [...now, use] : now.filter((each) => each !== use)))
            }
            className="size-5 shrink-0 accent-thread"
          />
          {LABELS[use]}
        </label>
      ))}
      {isOfChild ? <GuardianAgrees isNeeded={isAllowingMore} /> : null}
      <p className="text-sm">
        {creditName ? (
          <>
            Credit: <bdi className="font-semibold">{creditName}</bdi>
          </>
        ) : (
          "You would not be named. Once your report is sent, you can say there how you would like to be named."
        )}
      </p>
      <p className="text-sm text-soft">
        {isOfChild ? null : "Allow this only if whoever wears the garment agrees. "}If you withdraw this later,
        Sizewright shows them to nobody else from then on, and the designer is asked to take them down elsewhere. Copies
        that others downloaded or posted elsewhere cannot be recalled.
      </p>
      {isWithdrawing ? (
        <p role="status" className="border-l-4 border-thread pl-3">
          You are withdrawing your consent. The designer is asked to take your photos down; copies that others
          downloaded or posted elsewhere cannot be recalled.
        </p>
      ) : null}
      <div>
        <Button type="submit" look="quiet" disabled={isSaving}>
          {isSaving ? "Saving …" : isWithdrawing ? "Withdraw consent" : "Save"}
        </Button>
      </div>
      <p role="status" className="text-sm empty:hidden">
        {isChanged || isSaving ? null : "Saved."}
      </p>
      <ActionFailure failed={failed} className="" />
    </form>
  );
}

/** Photos of a child are used only if a parent or guardian agrees, and never shown by Sizewright to the public. */
function GuardianAgrees({ isNeeded }: { readonly isNeeded: boolean }) {
  return (
    <div className="border-l-4 border-line-strong pl-3">
      <p>
        A child wears this garment. The designer may use the photos only if their parent or guardian agrees. This test’s
        own public page never shows them.
      </p>
      {isNeeded ? (
        <label className="flex min-h-11 items-center gap-3">
          <input type="checkbox" name="guardianAgrees" value="yes" className="size-5 shrink-0 accent-thread" />I am
          their parent or guardian and agree, or I have that person’s agreement
        </label>
      ) : null}
    </div>
  );
}
