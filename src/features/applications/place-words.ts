import type { TesterState } from "./tester-state";

const WORDS: Readonly<Record<TesterState, string>> = {
  asked: "offered a place in size",
  "too late": "did not answer in time for size",
  accepted: "tests size",
  declined: "declined size",
  withdrawn: "offer taken back of size",
  stopped: "had to stop size",
};

/** "tests size L": what became of a place. */
export function placeWords(state: TesterState, sizeLabel: string): string {
  return `${WORDS[state]} ${sizeLabel}`;
}
