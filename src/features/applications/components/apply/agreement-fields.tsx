import type { AgreementShown } from "../../apply-form";
import type { Answered } from "./answered";
import { TickField } from "./tick-field";

interface AgreementFieldsProps {
  readonly agreement: AgreementShown;
  readonly answered: Answered;
}

/** What she agrees to, whole, and her yes. A newer text is agreed to anew. */
export function AgreementFields({ agreement: { version, text }, answered }: AgreementFieldsProps) {
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
      <p className="mb-3 text-sm text-soft">Version {version}. You can read it again on your own page at any time.</p>
      <TickField key={version} field="agrees" answered={answered}>
        I have read the agreement, version {version}, and agree to it.
      </TickField>
      <TickField field="adult" answered={answered}>
        I am 18 or over.
      </TickField>
    </div>
  );
}
