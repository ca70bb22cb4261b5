import type { MouseEvent } from "react";
import { Button } from "@/ui/button";
import type { AskedField } from "../save-answer";
import { ALSO, alsoValue } from "./also";

interface AskedFieldsProps {
  readonly asked: readonly AskedField[];
  readonly onChoose: (field: AskedField, which: "there" | "here") => void;
}

/** Fields that another device changed in the meantime, or that cannot be saved: the tester chooses. */
export function AskedFields({ asked, onChoose }: AskedFieldsProps) {
  return (
    <div role="alert" data-asked>
      {asked.map((field) => (
        <div
          key={field.field}
          id={askedId(field)}
          className="scroll-mt-4 mt-3 rounded-md border-l-4 border-thread bg-thread-tint px-4 py-3"
        >
          <p className="font-semibold wrap-anywhere">
            <span aria-hidden="true">▲ </span>
            {field.label}
          </p>
          <p className="wrap-anywhere">{field.message}</p>
          {field.there === null ? null : (
            <div className="mt-2 flex flex-wrap gap-2">
              <Choice verb="Keep" text={field.there} field={field} onChoose={() => onChoose(field, "there")} />
              <Choice verb="Use" text={field.here} field={field} onChoose={() => onChoose(field, "here")} />
            </div>
          )}
        </div>
      ))}
    </div>
  );
}

/** Where the question about a field stands. */
export function askedId({ field }: Pick<AskedField, "field">): string {
  return `asked-${field}`;
}

interface ChoiceProps {
  readonly verb: string;
  readonly text: string | null;
  readonly field: AskedField;
  readonly onChoose: () => void;
}

function Choice({ verb, text, field, onChoose }: ChoiceProps) {
  const choose = (event: MouseEvent) => {
    event.preventDefault();
    onChoose();
  };
  return (
    <Button type="submit" look="quiet" name={ALSO} value={alsoValue({ [field.field]: text })} onClick={choose}>
      {verb} <bdi className="min-w-0 wrap-anywhere">{shown(text)}</bdi>
    </Button>
  );
}

function shown(text: string | null): string {
  if (text === null || text === "") return "nothing";
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
