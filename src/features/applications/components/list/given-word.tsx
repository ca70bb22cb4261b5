import { WORD_WORDS } from "../../apply-words";
import { WordButtons } from "./word-buttons";

export interface GivenWord {
  readonly applicationId: string;
  readonly name: string;
  readonly word: "yes" | "maybe" | "no" | null;
}

interface WordProps {
  readonly given: GivenWord;
  /** Where a word is said; null for who may only look. */
  readonly callId: string | null;
}

/** The designer's word, to say or only to read. */
export function Word({ given: { applicationId, name, word }, callId }: WordProps) {
  if (callId !== null) return <WordButtons {...{ callId, applicationId, name, word }} />;
  return <p className="font-semibold">{WORD_WORDS[word ?? "undecided"]}</p>;
}
