import type { Typed } from "@/engine/editing";

const SIGN = /^\s*([+\-−])\s*/;

/** What a number adds or takes: whether it takes, and how much. */
export interface Signed {
  readonly takes: boolean;
  readonly amount: Typed;
}

/** An allowance as it stands in the draft, as the word and the number beside it. */
export function splitSign(typed: Typed): Signed {
  if (typeof typed === "number") return { takes: typed < 0, amount: Math.abs(typed) };
  const [lead = "", sign] = SIGN.exec(typed) ?? [];
  return { takes: sign !== undefined && sign !== "+", amount: typed.slice(lead.length) };
}

/** The word and the number as they stand in the draft. */
export function joinSign({ takes, amount }: Signed): Typed {
  if (!takes || amount === 0) return amount;
  return typeof amount === "number" ? -amount : `-${amount}`;
}

/** What is typed into the number beside a word; a minus typed by hand turns the word round. */
export function retyped(text: string, takes: boolean): Typed {
  const typed = splitSign(text);
  return joinSign({ takes: typed.takes ? !takes : takes, amount: typed.amount });
}
