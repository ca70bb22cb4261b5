import type { Typed } from "@/engine/editing";

const SIGN = /^\s*([+\-−])\s*/;

/** What a number adds or takes: whether it takes, and how much. */
export interface Signed {
  readonly takes: boolean;
  readonly amount: Typed;
}

/** The length of an edging or seam in the draft, as a word and a number. */
export function splitSign(typed: Typed): Signed {
  if (typeof typed === "number") return { takes: typed < 0, amount: Math.abs(typed) };
  const [lead = "", sign] = SIGN.exec(typed) ?? [];
  return { takes: sign !== undefined && sign !== "+", amount: typed.slice(lead.length) };
}

/** The word and the number as stored in the draft. */
export function joinSign({ takes, amount }: Signed): Typed {
  if (!takes || amount === 0) return amount;
  return typeof amount === "number" ? -amount : `-${amount}`;
}

/** The number typed beside the word; a typed minus changes the word. */
export function retyped(text: string, takes: boolean): Typed {
  const typed = splitSign(text);
  return joinSign({ takes: typed.takes ? !takes : takes, amount: typed.amount });
}
