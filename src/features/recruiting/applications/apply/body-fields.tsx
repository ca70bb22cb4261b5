import { describedBy, Field, TextInput } from "@/ui/field";
import { bodyField, typedText, type AskedMeasurement } from "./apply-answer";
import { controlId, type Answered } from "./answered";
import { ChoiceField } from "./choice-field";
import { TickField } from "./tick-field";

interface BodyFieldsProps {
  readonly asked: readonly AskedMeasurement[];
  readonly answered: Answered;
}

const UNITS = [
  { value: "cm", label: "centimetres" },
  { value: "in", label: "inches" },
];

/** The body measurements, each with how to take it. */
export function BodyFields({ asked, answered }: BodyFieldsProps) {
  return (
    <>
      <ChoiceField
        field="unit"
        label="Unit"
        hint="Enter 38.5, 38,5 or 38 1/2. You can also add the unit to a number, such as “97 cm” or “12 3/8 in”."
        choices={UNITS}
        answered={answered}
      />
      <div className="grid gap-x-8 sm:grid-cols-2">
        {asked.map((measurement) => (
          <BodyField key={measurement.id} measurement={measurement} answered={answered} />
        ))}
      </div>
      {answered.typed.asked?.map((id, index) => (
        <input key={index} type="hidden" name="asked" value={id} />
      ))}
      <TickField field="forAnother" answered={answered}>
        These are somebody else’s measurements: I make the garment for them.
      </TickField>
    </>
  );
}

function BodyField({ measurement, answered }: { measurement: AskedMeasurement; answered: Answered }) {
  const field = bodyField(measurement.id);
  const id = controlId(field);
  const doubts = answered.doubts[field];
  return (
    <Field
      id={id}
      label={measurement.decides ? measurement.label : `${measurement.label} (optional)`}
      hint={measurement.how}
      errors={answered.faults[field]}
    >
      <TextInput
        id={id}
        name={field}
        defaultValue={typedText(answered.typed, field)}
        autoComplete="off"
        className="numbers max-w-40"
        aria-describedby={`${describedBy(id)} ${id}-doubt`}
        aria-invalid={answered.faults[field] ? true : undefined}
      />
      <div id={`${id}-doubt`} aria-live="polite">
        {doubts?.map((doubt) => (
          <p key={doubt} className="mt-1.5 flex gap-2 border-l-4 border-line-strong py-0.5 pl-3 text-sm">
            <span aria-hidden="true" className="font-semibold">
              ?
            </span>
            {doubt}
          </p>
        ))}
      </div>
    </Field>
  );
}
