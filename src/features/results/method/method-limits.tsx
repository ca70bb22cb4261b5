"use client";

const UNKNOWN: readonly string[] = [
  "What all testers do the same way. If everyone holds the tape two centimetres lower than the pattern says, it looks like an error in the pattern.",
  "Which of two causes is right when both affect the same measurements in the same proportion. To find out, measure the edging, the seam or the stretch itself.",
  "A size that nobody tested. What is shown there comes from its neighbours and the pattern’s own calculation.",
  "Whether a fabric keeps changing in wear: garments are measured once, after washing.",
  "How a garment fits, beyond what testers say. Their answers are on the Fit page and don’t affect the differences.",
];

/** What no calculation from these reports can show. */
export function MethodLimits() {
  return (
    <ul className="max-w-3xl list-disc space-y-1.5 pl-5 text-soft">
      {UNKNOWN.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

const SOURCES: readonly { readonly what: string; readonly source: string }[] = [
  {
    what: "Carrying the reading errors of a swatch into a prediction",
    source: "JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), 5.1.2",
  },
  {
    what: "Average and spread of testers’ swatches, robust against a few extreme ones",
    source: "ISO 13528:2015, Algorithm A",
  },
  {
    what: "Comparing one tester with the others: Mandel’s h by measurement, and k where a tester repeated one, with their limits",
    source: "ISO 5725-2, 7.3",
  },
  {
    what: "Estimating spreads from groups of readings",
    source: "Restricted maximum likelihood (Patterson and Thompson 1971), here with a penalty for unusual values",
  },
  {
    what: "Comparing causes with each other",
    source: "Marginal likelihoods and averaging over models (Kass and Raftery 1995)",
  },
  {
    what: "Which ease feels right, from answers on a scale",
    source: "Cumulative logit (McCullagh 1980), with an effect of each tester",
  },
  {
    what: "How much yarn a stitch takes: in proportion to its size",
    source: "Munden 1959, for plain knit",
  },
  {
    what: "Starting values before there is data: 2.2 % change from swatch to garment, tape readings within half a tolerance, gauges that differ by 5 %",
    source: "Our own choice",
  },
];

/** Where each part of the method comes from. */
export function MethodSources() {
  return (
    <dl className="max-w-3xl space-y-2">
      {SOURCES.map(({ what, source }) => (
        <div key={what}>
          <dt className="font-semibold">{what}</dt>
          <dd className="text-soft">{source}</dd>
        </div>
      ))}
    </dl>
  );
}
