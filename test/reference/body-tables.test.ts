import { describe, expect, it } from "vitest";
import { z } from "zod";
import { BODY_TABLES, markOf, sizesFromTable, type BodyTable } from "@/engine/trade-tables";
import { readJson } from "./read-json";

const printedSchema = z.union([z.number(), z.tuple([z.number(), z.number()])]);
const rowSchema = z.array(printedSchema);

function table(id: string): BodyTable {
  const found = BODY_TABLES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no table ${id}`);
  return found;
}

function labels({ sizes }: BodyTable): string[] {
  return sizes.map(({ label }) => label);
}

/** What a table prints in a unit, by body measurement. */
function printed({ rows }: BodyTable, unit: "cm" | "in"): Record<string, unknown> {
  return Object.fromEntries(
    rows.flatMap(({ measurement, printed }) => (printed[unit] === undefined ? [] : [[measurement.id, printed[unit]]])),
  );
}

/** Rows of a file under the ids that the same rows have with us. */
function renamed(rows: Readonly<Record<string, unknown>>, names: Readonly<Record<string, string>>) {
  return Object.fromEntries(Object.entries(names).map(([theirs, ours]) => [ours, rowSchema.parse(rows[theirs])]));
}

describe("Craft Yarn Council, woman’s body (from memory; cyc_woman_body.json)", () => {
  const file = readJson("cyc_woman_body.json", z.looseObject({ sizes: z.array(z.string()) }));
  const ours = table("cyc-woman");
  const names = {
    bust: "bust",
    center_back_neck_to_wrist: "neck-to-wrist",
    back_waist_length: "back-waist-length",
    cross_back: "cross-back",
    arm_length_to_underarm: "arm-length",
    upper_arm: "upper-arm",
    armhole_depth: "armhole-depth",
    waist: "waist",
    hips: "hip",
  };

  it.each(["in", "cm"] as const)("has every row of every size in %s, and no other", (unit) => {
    const theirs = Object.keys(file).filter((key) => key.endsWith(`_${unit}`));
    expect(theirs.toSorted()).toEqual(
      Object.keys(names)
        .map((name) => `${name}_${unit}`)
        .toSorted(),
    );
    const suffixed = Object.fromEntries(Object.entries(names).map(([name, id]) => [`${name}_${unit}`, id]));
    expect(printed(ours, unit)).toEqual(renamed(file, suffixed));
    expect(labels(ours)).toEqual(file.sizes);
  });

  it("is marked as recalled throughout", () => {
    expect(ours.mark).toBe("memory");
    expect(ours.rows.filter(({ marks }) => marks !== undefined)).toEqual([]);
  });

  it("takes 5X from 60–62 in, 157.48 cm at most, and not from the chart’s 158 cm (by hand: 62 × 2.54)", () => {
    const [size] = sizesFromTable(ours, { sizes: ["size-5x"], measurements: [], ofRange: "high" }).sizes;
    expect(size?.body["bust"]).toBeCloseTo(157.48, 12);
  });

  it("prints centimetres within half a centimetre of its inches, but for the 62 in of 5X, printed 158 cm", () => {
    const far = ours.rows.flatMap(({ measurement, printed: { in: inches = [], cm = [] } }) => {
      const theirs = cm.flat();
      return inches.flat().flatMap((inch, index) => {
        const isNear = Math.abs(inch * 2.54 - (theirs[index] ?? Number.NaN)) <= 0.5;
        return isNear ? [] : [`${measurement.id} ${inch} in`];
      });
    });
    expect(far).toEqual(["bust 62 in"]);
  });

  it("keeps its flat rows and uneven steps: no body shrinks, and two pairs of sizes share their back waist", () => {
    const { sizes } = sizesFromTable(ours);
    const back = sizes.map(({ body }) => body["back-waist-length"]);
    expect(back[5]).toBe(back[6]);
    expect(back[7]).toBe(back[8]);
    const hip = sizes.map(({ body }) => body["hip"] ?? 0);
    // By hand from 46–48, 52–53, 54–55 in: the middles step by 5.5 in, then by 2 in.
    expect((hip[5] ?? 0) - (hip[4] ?? 0)).toBeCloseTo(5.5 * 2.54, 10);
    expect((hip[6] ?? 0) - (hip[5] ?? 0)).toBeCloseTo(2 * 2.54, 10);
  });
});

describe("EN 13402-3:2004, women (en13402_women.json)", () => {
  const bandsSchema = z.record(z.string(), z.tuple([z.number(), z.number()]));
  const scaleSchema = z.strictObject({ bust: rowSchema, waist: rowSchema, hip: rowSchema });
  const file = readJson("en13402_women.json", z.looseObject({ letter_bands_cm: bandsSchema, scale_cm: scaleSchema }));

  it("has every letter’s band (from memory; S, M and XL to 4XL borne out by a secondary source)", () => {
    const ours = table("en-13402-letters");
    expect(labels(ours)).toEqual(Object.keys(file.letter_bands_cm));
    expect(printed(ours, "cm")).toEqual({ bust: Object.values(file.letter_bands_cm) });
    const [bust] = ours.rows;
    const marks = ours.sizes.map(({ id, label }) => (bust === undefined ? [] : [label, markOf(ours, bust, id)]));
    const secondary = marks.filter(([, mark]) => mark === "secondary").map(([label]) => label);
    expect(secondary).toEqual(["S", "M", "XL", "XXL", "3XL", "4XL"]);
    expect(marks.filter(([, mark]) => mark === "memory")).toHaveLength(4);
  });

  it("has every size of the scale (from memory)", () => {
    const ours = table("en-13402-scale");
    expect(printed(ours, "cm")).toEqual(file.scale_cm);
    expect(labels(ours)).toEqual(file.scale_cm.bust.map(String));
    expect(ours.mark).toBe("memory");
  });
});

describe("ASTM D5585, misses (astm_d5585.json)", () => {
  const oldSchema = z.looseObject({ sizes: z.array(z.string()) });
  const file = readJson("astm_d5585.json", z.looseObject({ sizes: z.array(z.string()), d5585_95_memory: oldSchema }));

  it("has every row of D5585-11e1 that the public page shows (read in the document)", () => {
    const ours = table("astm-d5585-11");
    const names = {
      head_girth: "head",
      neck_base_girth: "neck-base",
      mid_neck_girth: "mid-neck",
      shoulder_girth: "shoulder-girth",
      bust_girth: "bust",
      under_bust_girth: "under-bust",
      upper_chest_girth: "upper-chest",
      waist_girth_curvy: "waist-curvy",
      waist_girth_straight: "waist-straight",
    };
    const theirs = Object.keys(file).filter((key) => key.includes("girth"));
    expect(theirs.toSorted()).toEqual(Object.keys(names).toSorted());
    expect(printed(ours, "in")).toEqual(renamed(file, names));
    expect(labels(ours)).toEqual(file.sizes);
    expect(ours.mark).toBe("read");
  });

  it("has every row of D5585-95 (from memory)", () => {
    const ours = table("astm-d5585-95");
    expect(printed(ours, "in")).toEqual(renamed(file.d5585_95_memory, { bust: "bust", waist: "waist", hip: "hip" }));
    expect(labels(ours)).toEqual(file.d5585_95_memory.sizes);
    expect(ours.mark).toBe("memory");
  });
});
