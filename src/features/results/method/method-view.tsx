import { ENGINE_VERSION } from "@/engine/engine-version";
import type { ExplainedTerm } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import type { Learned } from "@/features/calls/prior-data";
import { EmptyState } from "@/ui/empty-state";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { LearningSection } from "../learning/learning-section";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";
import { methodExample, plainAverage } from "./method-example";
import { MethodAsking } from "./method-asking";
import { MethodAside } from "./method-aside";
import { MethodCauses } from "./method-causes";
import { MethodExampleSteps } from "./method-example-steps";
import { MethodLimits, MethodSources } from "./method-limits";
import { MethodSpreads } from "./method-spreads";
import { MethodVerdicts } from "./method-verdicts";
import { PlainAverageTable } from "./plain-average-table";

interface MethodViewProps {
  readonly callId: string;
  /** What earlier tests taught. */
  readonly learned: Learned;
  readonly mayEdit: boolean;
  readonly results: Results<PageParts<"method">>;
  readonly names: ReadonlyMap<string, string>;
  readonly unit: LengthUnit;
  /** One term of a measurement in words, as on the pattern's own pages. */
  readonly sayTerm: (term: ExplainedTerm) => string;
}

/** How the results are calculated, with the call's own numbers. */
export function MethodView({ callId, learned, mayEdit, results, names, unit, sayTerm }: MethodViewProps) {
  const { status, cells, testersBySize } = results.differences;
  if (testersBySize.every((testers) => testers === 0))
    return (
      <EmptyState title="Nothing to calculate yet">
        <p>Once testers send reports, this page follows one of their measurements through the whole calculation.</p>
      </EmptyState>
    );
  const example = methodExample({ ...results, names });
  const average = plainAverage({ ...results, names });
  return (
    <div className="[&_p]:max-w-3xl">
      {status === "converged" ? null : (
        <Notice tone="problem" title="The estimation of the spreads stopped before it converged.">
          Treat this test’s estimates with care, and please tell us. The exported file of the test has everything needed
          to look into it.
        </Notice>
      )}
      {example === null ? null : (
        <Section title="From swatch to difference">
          <MethodExampleSteps {...{ example, unit, sayTerm }} />
          <a href={`/calls/${callId}/steps.csv`} className="text-link mt-3 inline-block text-sm">
            Download every measurement step by step (CSV)
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
      <Section title="What earlier tests taught">
        <LearningSection {...{ callId, learned, mayEdit }} />
      </Section>
      <Section title="How causes are found">
        <MethodCauses {...{ results, unit }} />
      </Section>
      <Section title="How it is worked out what to ask next">
        <MethodAsking />
      </Section>
      <Section title="What is excluded">
        <MethodAside callId={callId} {...{ results, names, unit }} />
      </Section>
      <Section title="What this can’t tell">
        <MethodLimits />
      </Section>
      <Section title="Where the methods come from">
        <MethodSources />
        <p className="mt-4 text-sm text-soft">
          Calculated by version {ENGINE_VERSION} of the engine. The estimation of the spreads{" "}
          {status === "converged" ? "converged" : "did not converge"}.
        </p>
      </Section>
    </div>
  );
}
