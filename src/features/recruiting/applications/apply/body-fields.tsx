"use client";

import { useState, type FormEvent } from "react";
import type { LengthUnit } from "@/engine/units";
import { describedBy, FieldErrors, TextInput } from "@/ui/field";
import { bodyField, typedText, type AskedMeasurement } from "./apply-answer";
import { WEARER_WORDS } from "./apply-copy";
import { controlId, type Answered } from "./answered";
import { ChoiceField } from "./choice-field";
import { TickField } from "./tick-field";
import { useBodyCheck } from "./use-body-check";

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
  const [unit, setUnit] = useState<LengthUnit>();
  const onUnit = ({ target }: FormEvent<HTMLElement>) => {
    if (target instanceof HTMLInputElement && target.name === "unit") setUnit(target.value === "in" ? "in" : "cm");
  };
  return (
    <div onChange={onUnit} className="group">
      <ChoiceField
        field="unit"
        label="Unit"
        hint="Enter 38.5, 38,5 or 38 1/2. You can also add the unit to a number, such as “97 cm” or “12 3/8 in”."
        choices={UNITS}
        answered={answered}
      />
      <div className="grid gap-x-8 sm:grid-cols-2">
        {asked.map((measurement) => (
          <BodyField key={measurement.id} {...{ measurement, answered, unit }} />
        ))}
      </div>
      {answered.typed.asked?.map((id, index) => (
        <input key={index} type="hidden" name="asked" value={id} />
      ))}
      <TickField field="forAnother" answered={answered}>
        These are somebody else’s measurements: I make the garment for them.
      </TickField>
      {/* Hidden by style alone, so that it opens without scripts, too. */}
      <div className="hidden border-l-4 border-line-strong pl-4 group-has-[[name=forAnother]:checked]:block">
        <ChoiceField
          field="wearer"
          label="Who wears it"
          hint="Ask them first: their measurements, and photos of the garment on them, are theirs."
          choices={Object.entries(WEARER_WORDS).map(([value, label]) => ({ value, label }))}
          answered={answered}
          isStacked
        />
      </div>
    </div>
  );
}

interface BodyFieldProps {
  readonly measurement: AskedMeasurement;
  readonly answered: Answered;
  /** The unit that was chosen since the page opened. */
  readonly unit: LengthUnit | undefined;
}

function BodyField({ measurement, answered, unit }: BodyFieldProps) {
  const field = bodyField(measurement.id);
  const id = controlId(field);
  const { isQuestioned, check, faults, doubts } = useBodyCheck(measurement, answered, unit);
  const isSilent = faults.length + doubts.length === 0;
  return (
    <div className="mb-5">
      <label htmlFor={id} className="mb-1 block font-semibold">
        {measurement.decides ? measurement.label : `${measurement.label} (optional)`}
      </label>
      <TextInput
        id={id}
        name={field}
        defaultValue={typedText(answered.typed, field)}
        autoComplete="off"
        className="numbers max-w-40"
        aria-describedby={`${describedBy(id)} ${id}-doubt`}
        aria-invalid={faults.length > 0 ? true : undefined}
        onBlur={check}
      />
      {/* What is asked takes the place of the hint, so that no field below it moves. */}
      <div className="mt-1.5 grid min-h-16 text-sm *:col-start-1 *:row-start-1">
        <p id={`${id}-hint`} className={isSilent ? "text-soft" : "invisible"}>
          {measurement.how}
        </p>
        <div>
          <FieldErrors id={id} errors={faults} />
          <div id={`${id}-doubt`} aria-live="polite">
            {doubts.map((doubt) => (
              <p key={doubt} className="flex gap-2 border-l-4 border-line-strong pl-3">
                <span aria-hidden="true" className="font-semibold">
                  ?
                </span>
                {doubt}
              </p>
            ))}
          </div>
        </div>
      </div>
      {isQuestioned ? <input type="hidden" name="asked" value={measurement.id} /> : null}
    </div>
  );
}
