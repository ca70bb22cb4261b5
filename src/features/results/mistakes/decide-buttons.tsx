"use client";

import { useActionState } from "react";
import type { ReadingDecision } from "@/engine/pattern";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { decideItem } from "./decision-actions";
import type { FlaggedItem } from "@/engine/results";

interface DecideButtonsProps {
  readonly callId: string;
  readonly item: Pick<FlaggedItem, "tester" | "part" | "position">;
  /** Names the item for people who hear the page. */
  readonly name: string;
  readonly decision: ReadingDecision | null;
  readonly counts: boolean;
}

/** Include, exclude, or leave the decision to the engine again; works without scripts too. */
export function DecideButtons({ callId, item, name, decision, counts }: DecideButtonsProps) {
  const [failed, decide, isSending] = useActionState(decideItem, undefined);
  const { tester, part, position } = item;
  return (
    <form action={decide} className="flex flex-wrap items-center gap-x-3">
      {Object.entries({ callId, tester, part, position }).map(([field, value]) => (
        <input key={field} type="hidden" name={field} value={value} />
      ))}
      <Button
        type="submit"
        name="decision"
        value={counts ? "set-aside" : "keep"}
        look="plain"
        disabled={isSending}
        className="!min-h-8 !px-0 !py-1 text-sm"
      >
        {counts ? "Exclude" : "Include"}
        <span className="sr-only">: {name}</span>
      </Button>
      {decision === null ? null : (
        <Button
          type="submit"
          name="decision"
          value="engine"
          look="plain"
          disabled={isSending}
          className="!min-h-8 !px-0 !py-1 text-sm"
        >
          Undo
          <span className="sr-only"> the decision: {name}</span>
        </Button>
      )}
      <ActionFailure failed={failed} className="" />
    </form>
  );
}
