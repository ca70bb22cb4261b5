import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { combinedUncertainty, rectangularUncertainty } from "@/engine/units";

const referenceSchema = z.object({
  inputs: z.array(z.object({ name: z.string(), value: z.number(), u: z.number() })),
  published: z.object({ uc_nm: z.number() }),
});

const gum = referenceSchema.parse(JSON.parse(readFileSync("test/reference/data/gum_h1.json", "utf8")));

function input(name: string): { value: number; u: number } {
  const found = gum.inputs.find((candidate) => candidate.name.startsWith(name));
  if (found === undefined) throw new Error(`no input ${name}`);
  return found;
}

describe("combined standard uncertainty (JCGM 100:2008, annex H.1: end-gauge calibration)", () => {
  it("is 32 nm for the worked example, and 31.7050905 nm unrounded (R, docs/references.md#uncertainty)", () => {
    const length = input("l_s");
    const expansion = input("alpha_s");
    const mean = input("theta mean");
    // Model: l = l_s + d − l_s (δα θ + α_s δθ), with δα and δθ estimated as 0; θ has two parts, whose derivative is 0.
    const combined = combinedUncertainty([
      { derivative: 1, standardUncertainty: length.u },
      { derivative: 1, standardUncertainty: input("d mean").u },
      { derivative: 1, standardUncertainty: input("d random").u },
      { derivative: 1, standardUncertainty: input("d systematic").u },
      { derivative: -length.value * mean.value, standardUncertainty: input("delta_alpha").u },
      { derivative: -length.value * expansion.value, standardUncertainty: input("delta_theta").u },
    ]);
    expect(Math.round(combined)).toBe(gum.published.uc_nm);
    expect(combined).toBeCloseTo(31.7, 1);
  });
});

describe("a rectangular distribution (JCGM 100:2008, 4.3.7; clause number from memory)", () => {
  it("has standard uncertainty a ÷ √3: 0.2886751346 mm for a reading to the nearest millimetre (R)", () => {
    expect(rectangularUncertainty(0.5)).toBeCloseTo(0.2886751346, 10);
  });
});
