import type { AgreementShown } from "./apply-answer";
import type { Answered } from "./answered";
import { TickField } from "./tick-field";

interface AgreementFieldsProps {
  readonly agreement: AgreementShown;
  readonly minimumAge: number;
  readonly answered: Answered;
}

/** The whole agreement, and the box to agree to it. A newer text needs a new tick. */
export function AgreementFields({ agreement: { version, text }, minimumAge, answered }: AgreementFieldsProps) {
  return (
    <div id="apply-agreement">
      <input type="hidden" name="agreementVersion" value={version} />
      <div
        role="region"
        aria-label="Text of the agreement"
        tabIndex={0}
        className="mb-1 max-h-96 overflow-y-auto rounded-sheet border border-line bg-sheet px-5 py-4 whitespace-pre-wrap wrap-anywhere"
      >
        {text}
      </div>
      <p className="mb-3 text-sm text-soft">
        Version {version}. You can read it again on your application’s page at any time.
      </p>
      <TickField key={version} field="agrees" answered={answered}>
        I have read the agreement, version {version}, and agree to it.
      </TickField>
      <TickField field="adult" answered={answered}>
        I am {minimumAge} or over.
      </TickField>
    </div>
  );
}
