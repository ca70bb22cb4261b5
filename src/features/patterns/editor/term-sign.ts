import type { Typed } from "@/engine/editing";

export type Sign = 1 | -1;

const MINUS = /^\s*[-−]/;

/** Whether a number adds or takes, even while only its sign is typed. */
export function signOf(typed: Typed): Sign {
  const takes = typeof typed === "number" ? typed < 0 : MINUS.test(typed);
  return takes ? -1 : 1;
}

/** The number without its sign, which is shown as a word beside it. */
export function withoutSign(typed: Typed): Typed {
  return typeof typed === "number" ? Math.abs(typed) : typed.replace(MINUS, "");
}

/** The number with a sign; a sign typed before the number counts too. */
export function withSign(typed: Typed, sign: Sign): Typed {
  if (typeof typed === "number") return typed === 0 && sign === -1 ? "-0" : sign * Math.abs(typed);
  if (sign === 1) return typed;
  return MINUS.test(typed) ? typed : `-${typed}`;
}
