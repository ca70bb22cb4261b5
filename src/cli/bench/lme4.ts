import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CallDocument } from "@/engine/pattern";
import { gapReadings } from "@/engine/gaps";
import { sizeScale } from "@/engine/pattern";

export type Lme4Fit =
  | { readonly status: "fitted"; readonly medianMs: number; readonly logLikelihood: number }
  | { readonly status: "no-r"; readonly says: string };

/** Fits the gap model's random effects to a call by R's lme4 (maximum likelihood, no priors, no known variances), its processor time taken inside R. */
export function fitByLme4(call: CallDocument, runs: number): Lme4Fit {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-bench-"));
  try {
    writeFileSync(join(folder, "readings.csv"), readingsCsv(call));
    writeFileSync(join(folder, "fit.R"), script(runs));
    const result = spawnSync("Rscript", ["--vanilla", "fit.R"], { cwd: folder, encoding: "utf8" });
    if (result.error) return { status: "no-r", says: "R is not installed here (Debian: r-base-core r-cran-lme4)." };
    const [medianMs, logLikelihood] = result.stdout.trim().split(" ").map(Number);
    if (result.status !== 0 || medianMs === undefined || logLikelihood === undefined) {
      return {
        status: "no-r",
        says: `R could not fit the model: ${result.stderr.trim().split("\n").at(-1) ?? "no reason given"}`,
      };
    }
    return { status: "fitted", medianMs, logLikelihood };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function readingsCsv(call: CallDocument): string {
  const scale = sizeScale(call.pattern);
  const lines = gapReadings(call).testers.flatMap(({ tester, gaps }) =>
    gaps.map(({ measurement, toleranceCm, gapCm, split }) => {
      const across = [...split.byFabric.values()].reduce((sum, { acrossCm }) => sum + acrossCm, 0) / toleranceCm;
      const along = [...split.byFabric.values()].reduce((sum, { alongCm }) => sum + alongCm, 0) / toleranceCm;
      const z = scale.get(tester.size) ?? 0;
      return [
        gapCm / toleranceCm,
        z,
        across,
        along,
        tester.id,
        `m${measurement}`,
        `${tester.size}-${measurement}`,
      ].join(",");
    }),
  );
  return ["y,z,across,along,tester,measurement,cell", ...lines].join("\n");
}

function script(runs: number): string {
  return `
suppressMessages(library(lme4))
readings <- read.csv("readings.csv", stringsAsFactors = TRUE)
fit <- function() suppressWarnings(suppressMessages(lmer(
  y ~ 0 + (1 | measurement) + (0 + z | measurement) + (1 | cell) + (0 + across | tester) + (0 + along | tester),
  readings, REML = FALSE, control = lmerControl(check.nobs.vs.nlev = "ignore", check.nobs.vs.nRE = "ignore"))))
invisible(fit())
times <- sapply(seq_len(${runs}), function(run) sum(system.time(model <- fit())[c("user.self", "sys.self")]))
model <- fit()
cat(1000 * median(times), as.numeric(logLik(model)))
`;
}
