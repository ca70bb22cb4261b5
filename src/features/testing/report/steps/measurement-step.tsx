import Link from "next/link";
import type { ReactNode } from "react";
import type { Measurement } from "@/engine/pattern";
import { fieldOf, keysOf } from "@/engine/reporting";
import { isBlank, type FilledReport } from "../filled-report";
import { CarriedAnswers } from "./carried-answers";
import { furtherKey } from "./item-key";
import { MeasuredList } from "./measured-list";
import { NextRow } from "./measured-row";
import { ReadingFields } from "./reading-fields";
import { StepForm, type StepProps } from "./step-form";

interface MeasurementStepProps extends StepProps {
  /** A reading that the address adds. */
  readonly added: { readonly measurement: string; readonly key: string } | null;
  /** The piece with the measurement highlighted, if the pattern says where it is taken. */
  readonly drawingOf: (measurement: Measurement) => ReactNode;
}

/** All measurements in one list; each opens in place. */
export function MeasurementStep({ report, next: nextPage, added, drawingOf }: MeasurementStepProps) {
  return (
    <StepForm report={report} next={nextPage} fields={["reading", fieldOf.blocking]}>
      <CarriedAnswers report={report} />
      <MeasuredList
        report={report}
        fieldsOf={(measurement, next) => (
          <MeasurementFields
            report={report}
            measurement={measurement}
            next={next}
            added={added?.measurement === measurement.id ? added.key : undefined}
            drawing={drawingOf(measurement)}
          />
        )}
      />
    </StepForm>
  );
}

interface MeasurementFieldsProps {
  readonly report: FilledReport;
  readonly measurement: Measurement;
  /** The measurement below it. */
  readonly next: Measurement | undefined;
  readonly added: string | undefined;
  readonly drawing: ReactNode;
}

/** One measurement: what the tape says, where it goes, and further readings. */
function MeasurementFields({ report, measurement, next, added, drawing }: MeasurementFieldsProps) {
  const { id, how } = measurement;
  const typed = keysOf(report.typed, { reading: id });
  const keys = [...new Set([...(typed.length === 0 ? ["1"] : typed), ...(added === undefined ? [] : [added])])];
  const isMeasured = keys.some((key) => !isBlank(report, fieldOf.reading(id, key, "value")));
  const canChange = report.ended === null;
  return (
    <>
      {keys.map((key, index) => (
        <ReadingFields
          key={key}
          report={report}
          measurement={measurement}
          reading={key}
          number={keys.length > 1 ? index + 1 : null}
          next={
            canChange && next !== undefined && index === keys.length - 1 ? (
              <NextRow id={next.id} label={next.label} />
            ) : null
          }
          {...(index === 0 ? { place: { drawing, how } } : {})}
        />
      ))}
      {canChange ? (
        // The line is there from the start, so that nothing moves when the first reading is saved.
        <p className="min-h-11">
          {isMeasured ? (
            <Link
              href={`?m=${id}&add=${furtherKey(keys)}`}
              scroll={false}
              className="text-link inline-flex min-h-11 items-center"
            >
              Add another reading
            </Link>
          ) : null}
        </p>
      ) : null}
    </>
  );
}
