import type { Provenance } from "./provenance";
import type { Craft } from "./yarn-weights";

/** Where the US names come from; makers differ about the thickest, and about needles 0 to 000. */
export const US_TOOL_SIZES: Provenance = {
  source: "Craft Yarn Council, Hooks and Needles",
  mark: "memory",
};

/** US knitting-needle numbers, mm. */
const NEEDLES_MM: Readonly<Record<string, number>> = {
  "000": 1.5,
  "00": 1.75,
  "0": 2,
  "1": 2.25,
  "1.5": 2.5,
  "2": 2.75,
  "2.5": 3,
  "3": 3.25,
  "4": 3.5,
  "5": 3.75,
  "6": 4,
  "7": 4.5,
  "8": 5,
  "9": 5.5,
  "10": 6,
  "10.5": 6.5,
  "11": 8,
  "13": 9,
  "15": 10,
  "17": 12.75,
  "19": 15,
  "35": 19,
  "50": 25,
};

interface Hook {
  readonly letters: readonly string[];
  readonly number: string | null;
  readonly mm: number;
}

/** US crochet hooks, which have letters too. Steel hooks count the other way, and differently from maker to maker. */
const HOOKS: readonly Hook[] = [
  { letters: ["B"], number: "1", mm: 2.25 },
  { letters: ["C"], number: "2", mm: 2.75 },
  { letters: ["D"], number: "3", mm: 3.25 },
  { letters: ["E"], number: "4", mm: 3.5 },
  { letters: ["F"], number: "5", mm: 3.75 },
  { letters: ["G"], number: "6", mm: 4 },
  { letters: [], number: "7", mm: 4.5 },
  { letters: ["H"], number: "8", mm: 5 },
  { letters: ["I"], number: "9", mm: 5.5 },
  { letters: ["J"], number: "10", mm: 6 },
  { letters: ["K"], number: "10.5", mm: 6.5 },
  { letters: ["L"], number: "11", mm: 8 },
  { letters: ["M", "N"], number: "13", mm: 9 },
  { letters: ["N", "P"], number: "15", mm: 10 },
  { letters: ["Q"], number: null, mm: 15 },
  { letters: ["S"], number: null, mm: 19 },
];

/** The parts of a US size: `H/8` has a letter and a number, `M/N-13` two letters. */
export interface UsSize {
  readonly letters: readonly string[];
  /** As the tables write it: `10.5`, `00`; null where only letters are written. */
  readonly number: string | null;
}

/**
 * Thickness of a needle or hook by its US name.
 *
 * @returns mm; undefined where no size has the name, or more than one has (`N`).
 * @see US_TOOL_SIZES, from memory.
 */
export function usToolMm(craft: Craft, { letters, number }: UsSize): number | undefined {
  if (craft === "knitting") return letters.length === 0 && number !== null ? ownMm(number) : undefined;
  if (letters.length === 0 && number === null) return undefined;
  const named = HOOKS.filter(
    (hook) => letters.every((letter) => hook.letters.includes(letter)) && (number === null || hook.number === number),
  );
  return named.length === 1 ? named[0]?.mm : undefined;
}

function ownMm(number: string): number | undefined {
  return Object.hasOwn(NEEDLES_MM, number) ? NEEDLES_MM[number] : undefined;
}
