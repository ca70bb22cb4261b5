import Link from "next/link";
import { fieldOf, keysOf } from "@/engine/reporting";
import { Sheet } from "@/ui/sheet";
import type { FilledReport } from "../filled-report";
import { HoursField } from "./hours-field";
import { furtherKey } from "./item-key";
import { yarnItems, type YarnItem } from "./yarn-items";
import { StepForm, type StepProps } from "./step-form";
import { YarnFields } from "./yarn-fields";

interface YarnStepProps extends StepProps {
  /** An entry that the address adds. */
  readonly added: { readonly yarn: string; readonly key: string } | null;
}

/** The use of each yarn, and the hours. */
export function YarnStep({ report, next, added }: YarnStepProps) {
  const items = yarnItems(report, added);
  const keys = [...keysOf(report.typed, "yarn"), ...items.flatMap((item) => item.keys)];
  const further = furtherKey(keys);
  return (
    <StepForm report={report} next={next} fields={["yarn", fieldOf.hours]}>
      <div className="grid grid-cols-[minmax(0,1fr)] gap-6">
        {items.map((item) => (
          <YarnSheet key={item.yarn.id} report={report} item={item} further={further} />
        ))}
        <Sheet>
          <h2 className="mb-4">Your time</h2>
          <HoursField report={report} />
        </Sheet>
      </div>
    </StepForm>
  );
}

interface YarnSheetProps {
  readonly report: FilledReport;
  readonly item: YarnItem;
  readonly further: string;
}

function YarnSheet({ report, item: { yarn, keys }, further }: YarnSheetProps) {
  const heading = `yarn-${yarn.id}`;
  return (
    <section aria-labelledby={heading}>
      <Sheet>
        <h2 id={heading} className="mb-4">
          {yarn.label}
          {yarn.colour ? <span className="text-soft">, {yarn.colour}</span> : null}
        </h2>
        {keys.map((key, index) => (
          <YarnFields key={key} report={report} yarn={yarn} entry={key} number={keys.length > 1 ? index + 1 : null} />
        ))}
        {report.ended === null ? (
          <p className="mt-3">
            <Link
              href={`?yarn=${yarn.id}&add=${further}`}
              scroll={false}
              className="text-link inline-flex min-h-11 items-center"
            >
              Add yarn with a different label
            </Link>
          </p>
        ) : null}
      </Sheet>
    </section>
  );
}
