"use client";

const UNKNOWN: readonly string[] = [
  "What all testers do alike. If everybody holds the tape two centimetres lower than the pattern says, that looks like the pattern’s own error.",
  "Which of two causes it is that move the same measurements in the same proportion. Measure the edging, the seam or the stretch itself, and you know.",
  "A size that nobody tested. What is shown there is drawn from its neighbours and from the pattern’s own arithmetic.",
  "Whether a fabric settles further in wear: garments are measured once, after washing.",
  "How a garment is felt to fit, beyond what testers say of it. That stands on the page Fit, beside the gaps and apart from them.",
];

/** What no sum over these reports can tell. */
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
    what: "Carrying a swatch’s reading errors into a prediction",
    source: "JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), 5.1.2",
  },
  {
    what: "Middle and spread of testers’ swatches, such that a few far ones hardly move them",
    source: "ISO 13528:2015, Algorithm A",
  },
  {
    what: "Comparing one tester with the others: Mandel’s h by measurement, and k where she repeated one, with their limits",
    source: "ISO 5725-2, 7.3",
  },
  {
    what: "Estimating spreads from groups of readings",
    source:
      "Restricted maximum likelihood (Patterson and Thompson 1971, from memory), here with a penalty for values far from what is usual",
  },
  {
    what: "Weighing causes against each other",
    source: "Marginal likelihoods and averaging over models (Kass and Raftery 1995, from memory)",
  },
  {
    what: "How much yarn a stitch takes: in proportion to its size",
    source: "Munden 1959, for plain knit, from memory",
  },
  {
    what: "What is usual before a call shows it: drifts of 2.2 %, a tape held to half a tolerance, gauges that differ by 5 %",
    source: "Common practice, no source",
  },
];

/** Where each part of the sums comes from. */
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
