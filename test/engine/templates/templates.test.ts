import { describe, expect, it } from "vitest";
import { stepsInSizes } from "@/engine/garment";
import { garmentView } from "@/engine/garment-view";
import { gradedMeasurements } from "@/engine/grading/graded-measurements";
import { gradingWarnings, parsePattern, type PatternDocument } from "@/engine/pattern";
import {
  isRepeatCoarse,
  patternFromTemplate,
  SLEEVES,
  TEMPLATES,
  type TemplateId,
  type TemplateRequest,
} from "@/engine/templates";
import { BODY_TABLES, sizesFromTable, type TableSizes } from "@/engine/trade-tables";
import { gradePattern } from "@/engine/grading";
import { highsSolver } from "@/solver/highs-solver";

const GAUGES = [
  { craft: "knitting", stitches: 12, rows: 16, overCm: 10 },
  { craft: "knitting", stitches: 22, rows: 30, overCm: 10.16 },
  { craft: "knitting", stitches: 32, rows: 46, overCm: 10 },
  { craft: "crochet", stitches: 13, rows: 8, overCm: 10 },
  { craft: "crochet", stitches: 18, rows: 20, overCm: 10 },
  { craft: "crochet", stitches: 24, rows: 14, overCm: 10 },
] as const;

const OWN: TableSizes = {
  bodyMeasurements: [{ id: "bust", label: "Bust", how: "" }],
  sizeBy: "bust",
  sizes: [70, 73, 98, 150].map((bust) => ({ id: `own-${bust}`, label: String(bust), body: { bust } })),
};
const SIZES = [...BODY_TABLES.map((table) => sizesFromTable(table)), OWN];

function requestOf(template: TemplateId, given: Partial<TemplateRequest> = {}): TemplateRequest {
  return {
    ...{ template, name: "Heron (invented)", craft: "knitting", toolMm: 4, easeCm: 8, lengthCm: 36, edgingCm: 5 },
    ...{ sleeve: "long", repeat: 1, gauge: { stitches: 22, rows: 30, overCm: 10 }, ...OWN, ...given },
  };
}

/** Every gauge with every table, ease and repeat; lengths of sleeves take turns. */
function allOf(template: TemplateId): TemplateRequest[] {
  return GAUGES.flatMap(({ craft, ...gauge }) =>
    SIZES.flatMap((sizes, at) =>
      [-4, 22].flatMap((easeCm, turn) =>
        [1, 3]
          .filter((repeat) => !isRepeatCoarse({ gauge, repeat }))
          .map((repeat) => {
            const sleeve = SLEEVES[(at + turn + repeat) % SLEEVES.length] ?? "long";
            return requestOf(template, { ...sizes, craft, gauge, easeCm, sleeve, repeat });
          }),
      ),
    ),
  );
}

function faultsOf(pattern: PatternDocument): string[] {
  const { pieces, seams } = stepsInSizes(pattern);
  return [
    ...gradingWarnings(pattern).map(({ path, says }) => `${path} ${says}`),
    ...pieces.flatMap(({ steps }) =>
      steps.flatMap(({ step, sizes }) =>
        sizes.flatMap(({ size, messages }) => messages.map((m) => `${step.id} ${size}: ${m}`)),
      ),
    ),
    ...seams.map(({ seam, size, message }) => `seam ${seam} ${size}: ${message}`),
    ...gradedMeasurements(pattern).flatMap(({ measurement, size, deviation, cm }) =>
      deviation !== null && Math.abs(deviation) > 1
        ? [`${measurement} ${size}: ${cm} is ${deviation} tolerances off`]
        : [],
    ),
  ];
}

const named = ({ craft, gauge, easeCm, sleeve, repeat, sizes }: TemplateRequest) =>
  `${craft} ${gauge.stitches}/${gauge.rows} ease ${easeCm} ${sleeve} ×${repeat} ${sizes.length} sizes`;

describe.each(TEMPLATES.map(({ id }) => id))("the template %s", (template) => {
  it("is whole, workable, within tolerance and never warned about, over gauges, sizes and preferences", () => {
    const requests = allOf(template);
    expect(requests.length).toBeGreaterThan(80);
    const wrong = requests.flatMap((request) => {
      const pattern = patternFromTemplate(request);
      const parsed = parsePattern(pattern);
      if (!parsed.ok) return [`${named(request)}: ${JSON.stringify(parsed.faults[0])}`];
      return faultsOf(parsed.document).map((fault) => `${named(request)}: ${fault}`);
    });
    expect([wrong.length, ...wrong.slice(0, 12)]).toEqual([0]);
  });

  it("stays workable when the grading is calculated anew", async () => {
    const solver = await highsSolver();
    for (const { craft, ...gauge } of GAUGES.filter((_, index) => index % 2 === 0)) {
      const pattern = patternFromTemplate(requestOf(template, { ...SIZES[1], craft, gauge }));
      const graded = gradePattern({ pattern }, solver);
      if (graded.status !== "optimal") throw new Error(`${craft} ${gauge.stitches}: ${JSON.stringify(graded)}`);
      expect(faultsOf({ ...pattern, grading: graded.grading })).toEqual([]);
    }
  });

  it("is drawn put together", () => {
    const pattern = patternFromTemplate(requestOf(template));
    for (const { id } of pattern.sizes) expect(garmentView(pattern, pattern.grading ?? {}, id)?.garment).toBeTruthy();
  });
});
