import Link from "next/link";
import { keysOf } from "@/engine/reporting";
import { ButtonLink } from "@/ui/button";
import { furtherKey } from "./item-key";
import { swatchTries } from "./swatch-tries";
import { StepForm, type StepProps } from "./step-form";
import { SwatchTryFields } from "./swatch-try-fields";
import { OffGauge } from "./off-gauge";

interface SwatchStepProps extends StepProps {
  /** Key of a swatch that the address adds. */
  readonly added: string | undefined;
  /** It was sent, and nothing changed since. */
  readonly isSent: boolean;
}

/** The tester's swatches side by side, what each would do to the size, and which of them counts. */
export function SwatchStep({ report, next, added, isSent }: SwatchStepProps) {
  const tries = swatchTries(report, added);
  const keys = [...keysOf(report.typed, "swatch"), ...tries.map(({ key }) => key)];
  return (
    <StepForm report={report} next={next} fields={["swatch"]}>
      <div className="grid grid-cols-[repeat(auto-fit,minmax(min(100%,20rem),1fr))] items-start gap-6">
        {tries.map((one) => (
          <SwatchTryFields key={one.key} report={report} one={one} keys={keys} canBeTakenOut={tries.length > 1} />
        ))}
      </div>
      {report.ended === null ? (
        <p className="mt-4">
          <Link
            href={`?add=${furtherKey(keys)}`}
            scroll={false}
            className="text-link inline-flex min-h-11 items-center"
          >
            Add another swatch
          </Link>
        </p>
      ) : null}
      <OffGauge tries={tries} />
      {report.ended === null && tries.some(({ outcome }) => outcome !== null && outcome.outlook !== null) ? (
        <p className="mt-6">
          <ButtonLink href={`/testing/${report.testerId}/swatch/send`} look="quiet">
            {isSent ? "Your swatch is sent" : "Send my swatch"}
          </ButtonLink>
        </p>
      ) : null}
    </StepForm>
  );
}
