import type { TypedApplication } from "./apply-answer";
import { Fact, Facts } from "../fact";
import { fieldLabel } from "./field-label";

/** Everything that was typed, to copy by hand, when the form is no longer there. */
export function TypedBack({ typed }: { readonly typed: TypedApplication }) {
  const fields = Object.entries(typed).filter(([field]) => !HIDDEN.has(field));
  return (
    <Facts>
      {fields.map(([field, values]) => (
        <Fact key={field} label={fieldLabel(field, [])}>
          {values.join(", ")}
        </Fact>
      ))}
    </Facts>
  );
}

const HIDDEN = new Set(["callId", "formKey", "agreementVersion", "timeZone", "asked", "agrees", "adult"]);
