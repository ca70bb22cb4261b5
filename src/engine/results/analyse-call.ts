import { countedReadings, gapsOfScreened, predictTesters, screenOutliers, type GapsOutput } from "../gaps";
import type { CallDocument } from "../pattern";
import type { CallResults } from "./call-results-schema";
import type { TesterResults } from "./tester-results-schema";
import { compareTesters } from "./consistency";
import { fitResults } from "./fit-results";
import { flaggedItems } from "./flagged-items";
import { gaugeResults } from "./gauge-results";
import { groupBy } from "./group-by";
import { methodResults } from "./method-results";
import { namedCauses } from "./named-causes";
import { testerResults } from "./tester-results";
import { withoutUnusable, type UsableCall } from "./unusable-reports";
import { yarnResults } from "./yarn-results";

/**
 * Everything that the results pages show of a call, computed once: the output of `gaps`, and all lists derived from it.
 *
 * A report whose numbers cannot be computed with is left out and named; the rest is analysed without it.
 *
 * @param call a parsed call document.
 * @returns lists in the pattern's and the call's order; lengths in cm.
 */
export function analyseCall(call: CallDocument): CallResults {
  return resultsOf(withoutUnusable(call));
}

function resultsOf({ usable: call, predictions, leftOut }: UsableCall): CallResults {
  const screened = screenOutliers(call);
  const screenedPredictions = predictTesters(screened.call, predictions);
  const counted = countedReadings(screened.call, screenedPredictions);
  const output = gapsOfScreened(screened, screenedPredictions, counted);
  const { testers: compared, consistency } = compareTesters(call.pattern, output.testers, counted);
  const suspects = groupBy(output.suspects, ({ tester }) => tester);
  const stepsOf = stepsByTester(call, output);
  const testers = call.testers.flatMap((reported, index): TesterResults[] => {
    const [finding, of, ofScreened] = [output.testers[index], compared[index], screened.call.testers[index]];
    const prediction = predictions.get(reported.id)?.prediction;
    if (finding === undefined || of === undefined || ofScreened === undefined || prediction === undefined) return [];
    return [
      testerResults({
        ...{ pattern: call.pattern, reported, screened: ofScreened, prediction, finding, comparisons: of.comparisons },
        ...{ steps: stepsOf[index] ?? [], suspects: suspects.get(reported.id) ?? [] },
      }),
    ];
  });
  return {
    differences: {
      cells: [...output.cells],
      causes: namedCauses(call.pattern, output.causes),
      askNext: [...output.askNext],
      testersBySize: call.pattern.sizes.map(({ id }) => call.testers.filter(({ size }) => size === id).length),
      status: output.status,
    },
    gauges: gaugeResults({
      ...{ pattern: call.pattern, findings: output.gauge, testers },
      screened: screened.call.testers,
    }),
    consistency,
    flagged: flaggedItems(call.testers, output.suspects),
    yarn: yarnResults(screened.call, testers, output.suspects),
    fit: fitResults(screened.call, output),
    method: methodResults({ screened: screened.call, output, counted, testers }),
    testers,
    leftOut: [...leftOut],
  };
}

/** `steps` runs through all readings of all testers. */
function stepsByTester({ testers }: CallDocument, { steps }: GapsOutput) {
  let from = 0;
  return testers.map(({ readings }) => {
    const own = steps.slice(from, from + readings.length);
    from += readings.length;
    return own;
  });
}
