import { OwnAnswer } from "../corrections/own-answer";
import type { TesterCorrection } from "../corrections/correction-data";
import type { LoadedTester } from "../home/loaders";
import { CorrectionText } from "./correction-text";

interface OwnCorrectionsProps {
  readonly corrections: readonly TesterCorrection[];
  readonly loaded: Pick<LoadedTester, "tester" | "inHand">;
}

/** Every correction that concerns a tester's size, read or not, beside the pattern that it corrects. */
export function OwnCorrections({ corrections, loaded }: OwnCorrectionsProps) {
  if (corrections.length === 0) return null;
  return (
    <ul aria-label="Corrections" className="my-6 grid max-w-2xl gap-3">
      {corrections.map((correction) => (
        <li
          key={correction.correctionId}
          className="rounded-md border border-line-strong border-l-4 border-l-thread bg-sheet px-4 py-3"
        >
          <CorrectionText correction={correction} tester={loaded.tester} />
          <OwnAnswer {...{ correction, loaded }} />
        </li>
      ))}
    </ul>
  );
}
