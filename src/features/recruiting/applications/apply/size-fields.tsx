import { FieldErrors, Select } from "@/ui/field";
import { PREFERENCES, typedText, type OfferedSize } from "./apply-answer";
import { controlId, type Answered } from "./answered";

interface SizeFieldsProps {
  readonly sizes: readonly OfferedSize[];
  readonly answered: Answered;
}

/** The sizes the applicant would make, and preferences among them. */
export function SizeFields({ sizes, answered }: SizeFieldsProps) {
  return (
    <>
      <fieldset className="mb-6 min-w-0">
        <legend className="font-semibold">Sizes you would make</legend>
        <p className="mb-1 text-sm text-soft">
          Leave all empty if any size near your measurements is fine. You will not get a size that is far from them.
        </p>
        <div className="grid gap-x-8 sm:grid-cols-2">
          {sizes.map((size) => (
            <SizeTick key={size.id} size={size} isTicked={answered.typed.accepts?.includes(size.id) ?? false} />
          ))}
        </div>
      </fieldset>
      <fieldset className="min-w-0">
        <legend className="font-semibold">Which would you like best? (optional)</legend>
        <div className="mt-2 grid gap-x-4 gap-y-4 sm:grid-cols-3">
          {PREFERENCES.map((field, index) => (
            <PreferenceSelect
              key={field}
              field={field}
              label={CHOICES[index] ?? ""}
              sizes={sizes}
              answered={answered}
            />
          ))}
        </div>
      </fieldset>
    </>
  );
}

const CHOICES = ["First choice", "Second choice", "Third choice"];

function SizeTick({ size: { id, label, body }, isTicked }: { size: OfferedSize; isTicked: boolean }) {
  return (
    <label className="flex min-h-11 cursor-pointer items-start gap-3 py-2">
      <input
        type="checkbox"
        name="accepts"
        value={id}
        defaultChecked={isTicked}
        className="mt-0.5 size-5 shrink-0 accent-thread"
      />
      <span className="min-w-0 wrap-anywhere">
        <span className="font-semibold">{label}</span>
        {body ? <span className="numbers block text-sm text-soft">for {body}</span> : null}
      </span>
    </label>
  );
}

interface PreferenceSelectProps extends SizeFieldsProps {
  readonly field: string;
  readonly label: string;
}

function PreferenceSelect({ field, label, sizes, answered: { typed, faults } }: PreferenceSelectProps) {
  const id = controlId(field);
  return (
    <div>
      <label htmlFor={id} className="mb-1 block text-sm">
        {label}
      </label>
      <Select
        id={id}
        name={field}
        defaultValue={typedText(typed, field)}
        aria-describedby={`${id}-error`}
        aria-invalid={faults[field] ? true : undefined}
      >
        <option value="">none</option>
        {sizes.map((size) => (
          <option key={size.id} value={size.id}>
            {size.label}
          </option>
        ))}
      </Select>
      <FieldErrors id={id} errors={faults[field]} />
    </div>
  );
}
