"use client";

import { SaidList, type Said } from "./said-list";

interface AskedBackProps {
  readonly id: string;
  /** What is hard to believe, nothing is drawn where there is none. */
  readonly items: readonly Said[];
  /** She has tried to go on without an answer. */
  readonly insists: boolean;
  readonly confirmed: boolean;
  readonly onConfirm: (confirmed: boolean) => void;
}

/** Numbers that may be right but seldom are, and one tick that says so for all of them. */
export function AskedBack({ id, items, insists, confirmed, onConfirm }: AskedBackProps) {
  if (items.length === 0) return null;
  return (
    <SaidList
      id={id}
      tone={insists && !confirmed ? "problem" : "plain"}
      title="Hard to believe: please look again"
      items={items}
    >
      <label className="mt-3 flex min-h-11 cursor-pointer items-center gap-3 font-semibold">
        <input
          type="checkbox"
          className="size-5 accent-thread"
          checked={confirmed}
          onChange={(event) => onConfirm(event.currentTarget.checked)}
        />
        Yes, this is right
      </label>
    </SaidList>
  );
}
