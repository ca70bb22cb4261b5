"use client";

import { MessageList, type Said } from "./message-list";

interface AskedBackProps {
  readonly id: string;
  /** Unusual numbers; nothing is drawn where there are none. */
  readonly items: readonly Said[];
  /** The person tried to continue without an answer. */
  readonly insists: boolean;
  readonly confirmed: boolean;
  readonly onConfirm: (confirmed: boolean) => void;
}

/** Numbers that are unusual but may be right, and one checkbox to confirm all of them. */
export function AskedBack({ id, items, insists, confirmed, onConfirm }: AskedBackProps) {
  if (items.length === 0) return null;
  return (
    <MessageList
      id={id}
      tone={insists && !confirmed ? "problem" : "plain"}
      title="Please check these unusual numbers"
      items={items}
    >
      <label className="mt-3 flex min-h-11 cursor-pointer items-center gap-3 font-semibold">
        <input
          type="checkbox"
          className="size-5 accent-thread"
          checked={confirmed}
          onChange={(event) => onConfirm(event.currentTarget.checked)}
        />
        Yes, that’s correct
      </label>
    </MessageList>
  );
}
