import { ENGINE_VERSION } from "@/engine/engine-version";
import type { ExplainedTerm } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { EmptyState } from "@/ui/empty-state";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";
import { methodExample, plainAverage } from "../method-example";
import { MethodAside } from "./method-aside";
import { MethodCauses } from "./method-causes";
import { MethodExampleSteps } from "./method-example-steps";
import { MethodLimits, MethodSources } from "./method-limits";
import { MethodSpreads } from "./method-spreads";
import { MethodVerdicts } from "./method-verdicts";
import { PlainAverageTable } from "./plain-average-table";

interface MethodViewProps {
  readonly callId: string;
  readonly results: Results<PageParts<"method">>;
  readonly names: ReadonlyMap<string, string>;
  readonly unit: LengthUnit;
  /** One term of a measurement in words, as the pattern's own pages say it. */
  readonly sayTerm: (term: ExplainedTerm) => string;
}

/** How the call is reckoned, with its own numbers. */
export function MethodView({ callId, results, names, unit, sayTerm }: MethodViewProps) {
  const { status, cells, testersBySize } = results.differences;
  if (testersBySize.every((testers) => testers === 0))
    return (
      <EmptyState title="Nothing to reckon yet">
        <p>As soon as testers’ reports are here, this page follows one of their measurements through all the sums.</p>
      </EmptyState>
    );
  const example = methodExample({ ...results, names });
  const average = plainAverage({ ...results, names });
  return (
    <div className="[&_p]:max-w-3xl">
      {status === "converged" ? null : (
        <Notice tone="problem" title="The search for the spreads stopped before it had settled.">
          Take this call’s estimates with care, and tell us of it: its exported document holds all that is needed to
          look into it.
        </Notice>
      )}
      {example === null ? null : (
        <Section title="From swatch to gap">
          <MethodExampleSteps {...{ example, unit, sayTerm }} />
          <a href={`/calls/${callId}/steps.csv`} className="text-link mt-3 inline-block text-sm">
            Every measurement of the call, step by step, as a CSV file
          </a>
        </Section>
      )}
      {average === null ? null : (
        <Section title="Why a plain average misleads">
          <PlainAverageTable {...{ average, unit }} />
        </Section>
      )}
      <Section title="What the verdicts mean">
        <MethodVerdicts cells={cells} />
      </Section>
      <Section title="How large the spreads are here">
        <MethodSpreads {...{ results, unit }} />
      </Section>
      <Section title="How causes are found">
        <MethodCauses {...{ results, unit }} />
      </Section>
      <Section title="What is set aside">
        <MethodAside callId={callId} {...{ results, names, unit }} />
      </Section>
      <Section title="What this cannot know">
        <MethodLimits />
      </Section>
      <Section title="Where the methods come from">
        <MethodSources />
        <p className="mt-4 text-sm text-soft">
          Reckoned by version {ENGINE_VERSION} of the engine. The search for the spreads{" "}
          {status === "converged" ? "converged: it came to where no change makes them fit better" : "did not converge"}.
        </p>
      </Section>
    </div>
  );
}
