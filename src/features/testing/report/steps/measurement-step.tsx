import Link from "next/link";
import type { ReactNode } from "react";
import type { Measurement } from "@/engine/pattern";
import { keysOf } from "@/engine/reporting";
import { Sheet } from "@/ui/sheet";
import type { FilledReport } from "../filled-report";
import { measuredItems } from "./measured";
import { furtherKey } from "./item-key";
import { MeasuredList } from "./measured-list";
import { ReadingFields } from "./reading-fields";
import { StepForm } from "./step-form";

interface MeasurementStepProps {
  readonly report: FilledReport;
  readonly measurement: Measurement;
  /** Key of a reading that the address adds. */
  readonly added: string | undefined;
  /** The piece with the measurement highlighted, if the pattern says where it is taken. */
  readonly drawing: ReactNode;
}

/** One measurement: where to measure, the readings, and links to the others. */
export function MeasurementStep({ report, measurement, added, drawing }: MeasurementStepProps) {
  const { id, letter, label, how } = measurement;
  const items = measuredItems(report);
  const index = items.findIndex((item) => item.measurement.id === id);
  const typed = keysOf(report.typed, { reading: id });
  const keys = [...new Set([...(typed.length === 0 ? ["1"] : typed), ...(added === undefined ? [] : [added])])];
  return (
    <>
      <StepForm key={id} report={report} fields={[`reading.${id}`]}>
        <Sheet>
          <p className="numbers text-sm text-soft">
            {index + 1} of {items.length}
          </p>
          <h2 className="mb-2">
            <span className="numbers mr-2 text-thread">{letter}</span>
            {label}
          </h2>
          {drawing}
          <p className="mb-5 wrap-anywhere">{how}</p>
          {keys.map((key, keyIndex) => (
            <ReadingFields
              key={key}
              report={report}
              measurement={measurement}
              reading={key}
              number={keys.length > 1 ? keyIndex + 1 : null}
            />
          ))}
          {report.ended === null ? (
            // The line is there from the start, so that nothing moves when the first reading is saved.
            <p className="mt-3 min-h-11">
              {typed.length === 0 ? null : (
                <Link
                  href={`?m=${id}&add=${furtherKey(keys)}`}
                  scroll={false}
                  className="text-link inline-flex min-h-11 items-center"
                >
                  Add another reading
                </Link>
              )}
            </p>
          ) : null}
          <Neighbours before={items[index - 1]?.measurement} after={items[index + 1]?.measurement} />
        </Sheet>
      </StepForm>
      <MeasuredList items={items} current={id} />
    </>
  );
}

function Neighbours({ before, after }: { readonly before?: Measurement; readonly after?: Measurement }) {
  return (
    <nav aria-label="Measurements before and after" className="mt-2 flex justify-between gap-4">
      <span className="min-w-0">{before ? <Neighbour to={before}>{`← ${before.label}`}</Neighbour> : null}</span>
      <span className="min-w-0 text-right">
        {after ? <Neighbour to={after}>{`Next: ${after.label} →`}</Neighbour> : null}
      </span>
    </nav>
  );
}

function Neighbour({ to, children }: { readonly to: Measurement; readonly children: string }) {
  return (
    <Link
      href={`?m=${to.id}`}
      prefetch={false}
      className="text-link inline-flex min-h-11 items-center font-semibold wrap-anywhere"
    >
      {children}
    </Link>
  );
}
