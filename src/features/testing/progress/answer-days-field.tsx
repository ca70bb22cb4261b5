import { DAYS_TO_ANSWER } from "@/features/recruiting/listing/usual-days-computed";
import { describedBy, Field, Select } from "@/ui/field";

interface AnswerDaysFieldProps {
  readonly id: string;
  readonly chosen?: string;
  readonly errors?: readonly string[];
}

/** How long somebody who is invited has to answer. */
export function AnswerDaysField({ id, chosen = String(DAYS_TO_ANSWER), errors }: AnswerDaysFieldProps) {
  return (
    <Field id={id} label="Time to answer" errors={errors}>
      <Select id={id} name="days" defaultValue={chosen} aria-describedby={describedBy(id)}>
        <option value="3">3 days</option>
        <option value="7">7 days</option>
        <option value="14">14 days</option>
        <option value="30">30 days</option>
      </Select>
    </Field>
  );
}
