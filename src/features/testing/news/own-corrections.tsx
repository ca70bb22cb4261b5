import type { Correction } from "../corrections/correction-data";
import type { LoadedTester } from "../home/loaders";
import { CorrectionText } from "./correction-text";

interface OwnCorrectionsProps {
  readonly corrections: readonly Correction[];
  readonly tester: LoadedTester["tester"];
}

/** Every correction that concerns a tester's size, read or not, beside the pattern that it corrects. */
export function OwnCorrections({ corrections, tester }: OwnCorrectionsProps) {
  if (corrections.length === 0) return null;
  return (
    <ul aria-label="Corrections" className="my-6 grid max-w-2xl gap-3">
      {corrections.map((correction) => (
        <li
          key={correction.correctionId}
          className="rounded-md border border-line-strong border-l-4 border-l-thread bg-sheet px-4 py-3"
        >
          <CorrectionText {...{ correction, tester }} />
        </li>
      ))}
    </ul>
  );
}
