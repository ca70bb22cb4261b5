import { describe, expect, it } from "vitest";
import { fitModel } from "@/engine/fit";
import { gaps, screenOutliers } from "@/engine/gaps";
import type { CallDocument, Tester } from "@/engine/pattern";
import { seededRandom } from "@/engine/seeded-random";
import { callDocument, reader } from "../../factories/call";
import { patternDocument } from "../../factories/pattern";

type Scale = -2 | -1 | 0 | 1 | 2;

const SIZES = ["a", "b", "c", "d", "e"].map((id, index) => ({ id, label: id, body: { bust: 90 + 10 * index } }));

/** Five sizes with 10 cm of ease at the bust; by design the bust is 100, 110 … 140. */
function fiveSizes(testers: readonly Tester[]): CallDocument {
  const grading = {
    width: Object.fromEntries(SIZES.map(({ id }, index) => [id, 98 + 10 * index])),
    height: Object.fromEntries(SIZES.map(({ id }) => [id, 100])),
  };
  const places = Object.fromEntries(SIZES.map(({ id }) => [id, { least: 1, wanted: 2 }]));
  return callDocument(testers, { pattern: patternDocument({ sizes: SIZES, grading }), places });
}

/** Testers by size with what each says of the bust; their garments measure as planned but for `offCm`. */
function feeling(
  bySize: Readonly<Record<string, readonly Scale[]>>,
  change: (size: string) => Partial<Tester> & { readonly offCm?: number } = () => ({}),
): Tester[] {
  return SIZES.flatMap(({ id: size, body }) =>
    (bySize[size] ?? []).map((scale, index) => {
      const { offCm = 0, ...more } = change(size);
      const fit = [{ area: "bust", scale }];
      return reader(`${size}-${index}`, { bust: body.bust + 10 + offCm }, { size, fit, ...more });
    }),
  );
}

function modelOf(call: CallDocument) {
  return fitModel(screenOutliers(call).call, gaps(call));
}

const FROM_D: Readonly<Record<string, readonly Scale[]>> = {
  a: [0, 0, 1, -1],
  b: [0, 1, 0, 0],
  c: [0, -1, 0, 0],
  d: [-1, -1, -2, -1],
  e: [-1, -2, -1, 0],
};

describe("the ease that feels right, and where it does not", { timeout: 60_000 }, () => {
  it("finds the size from which the bust feels tight, between which sizes that begins, and the ease it would need", () => {
    const { findings, eases } = modelOf(fiveSizes(feeling(FROM_D)));
    expect(findings).toMatchObject([
      { measurement: "bust", area: "bust", feels: "tight", from: "d", to: "e", agree: 7, testers: 8 },
    ]);
    const [finding] = findings;
    expect(finding?.chance).toBeLessThan(0.05);
    expect(["c", "d"]).toContain(finding?.begins.earliest);
    expect(["d", "e"]).toContain(finding?.begins.latest);
    expect(finding?.ends).toEqual({ earliest: "e", latest: "e" });
    const [a, , , , e] = eases[0]?.sizes ?? [];
    expect(a?.plannedCm).toBe(10);
    expect(a?.rightCm).toBeGreaterThan(8);
    expect(a?.rightCm).toBeLessThan(12);
    expect(e?.lowCm).toBeGreaterThan(10);
    expect(e?.rightCm).toBeGreaterThan(e?.lowCm ?? Infinity);
    expect(e?.highCm ?? Infinity).toBeGreaterThan(e?.rightCm ?? Infinity);
  });

  it("finds what is loose up to a size, and what is tight in all", () => {
    const upTo = modelOf(
      fiveSizes(feeling({ a: [1, 1, 2, 1], b: [1, 2, 1, 1], c: [0, 0, 0], d: [0, -1, 0, 0], e: [0, 1, 0] })),
    );
    expect(upTo.findings).toMatchObject([{ feels: "loose", from: "a", to: "b" }]);
    const all = modelOf(
      fiveSizes(feeling({ a: [-1, -1, -2], b: [-1, -1], c: [-1, -2, -1], d: [-1, -1], e: [-1, -1, 0] })),
    );
    expect(all.findings).toMatchObject([{ feels: "tight", from: "a", to: "e", agree: 12, testers: 13 }]);
  });

  it("blames the garments where these came out narrow, and not the ease", () => {
    const off = (size: string) => ({ offCm: size === "d" || size === "e" ? -7 : 0 });
    const { findings, eases } = modelOf(fiveSizes(feeling(FROM_D, off)));
    expect(findings).toEqual([]);
    expect(eases[0]?.sizes[4]?.lowCm).toBeLessThan(11);
  });

  it("judges answers by how close each tester likes the garment", () => {
    const likes = (size: string) => ({ prefers: { bust: size === "d" || size === "e" ? (1 as const) : (0 as const) } });
    const mild: Readonly<Record<string, readonly Scale[]>> = { ...FROM_D, d: [-1, -1, -1, -1], e: [-1, -1, -1, 0] };
    expect(modelOf(fiveSizes(feeling(mild))).findings).toHaveLength(1);
    expect(modelOf(fiveSizes(feeling(mild, likes))).findings).toEqual([]);
  });

  it("judges answers by the tester's own body where it is given", () => {
    const broad = (size: string) => ({ body: { bust: 90 + 10 * "abcde".indexOf(size) + (size > "c" ? 8 : 0) } });
    expect(modelOf(fiveSizes(feeling(FROM_D, broad))).findings).toEqual([]);
  });

  it("says nothing where testers differ, where one answers alone, or where nobody does", () => {
    expect(modelOf(fiveSizes(feeling({ a: [0, 1], c: [-1, 0, 1, 0, -1], e: [0, -1] }))).findings).toEqual([]);
    const alone = modelOf(fiveSizes(feeling({ c: [-2] })));
    expect(alone.findings).toEqual([]);
    expect(modelOf(fiveSizes([]))).toEqual({ findings: [], eases: [] });
  });

  it("does not depend on the order of the testers", () => {
    const testers = feeling(FROM_D);
    expect(modelOf(fiveSizes(testers.toReversed()))).toEqual(modelOf(fiveSizes(testers)));
  });

  it("stays bounded for very many testers", () => {
    const random = seededRandom(Number(process.env.SEED));
    const scales = [-1, 0, 0, 1] as const;
    const size = () => Array.from({ length: 2400 }, () => scales[random.below(4)] ?? 0);
    const call = fiveSizes(feeling({ a: size(), b: size(), c: size(), d: size(), e: size() }));
    // Their differences would take far longer than the fit: what is known of them is given.
    const variances = { offset: 0, step: 0, cell: 0, driftAcross: 0.0005, driftAlong: 0.0005, residual: 0.25 };
    const { eases } = fitModel(call, { cells: [], variances });
    for (const { rightCm } of eases[0]?.sizes ?? []) expect(Math.abs((rightCm ?? NaN) - 10)).toBeLessThan(1);
  });
});
