import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { ChoiceControl, type FieldChoice } from "./choice-control";

interface ChoiceFieldProps {
  readonly report: FilledReport;
  readonly field: string;
  readonly legend: string;
  readonly choices: readonly FieldChoice[];
  /** Preselected; it is saved once the tester types anything in the form. */
  readonly prefilled?: string;
  /** That it is not answered moves nothing below it. */
  readonly keepsSpace?: boolean;
}

/** A choice between a few values. */
export function ChoiceField({ report, field, legend, choices, prefilled, keepsSpace }: ChoiceFieldProps) {
  const { faults, remarks } = fieldNotes(report, field);
  return (
    <ChoiceControl
      {...{ field, legend, choices }}
      chosen={textOf(report, field) ?? prefilled ?? null}
      {...(prefilled === undefined ? {} : { isPrefilled: true })}
      {...(keepsSpace ? { keepsSpace } : {})}
      {...(faults.length > 0 ? { faults } : {})}
      {...(remarks.length > 0 ? { remarks } : {})}
    />
  );
}
