import { describe, expect, it } from "vitest";
import { newPatternSchema } from "../../../../src/features/patterns/new/new-pattern-schema";
import { initialPattern } from "../../../../src/features/patterns/new/initial-pattern";

const FABRIC = { label: "Half linen", toolMm: "4,5 mm", stitches: "17 1/2", rows: "24", over: "4 in", worked: "flat" };
const FORM = {
  formKey: "5f0c2a60-5f0c-4a60-8f0c-5f0c2a605f0c",
  name: "  Heron vest ",
  craft: "knitting",
  sizesFrom: "cyc-woman",
  own: {},
  fabric: FABRIC,
};

function begun(change: object, unit: "cm" | "in" = "cm") {
  return initialPattern(newPatternSchema.parse({ ...FORM, ...change }), unit);
}

describe("a pattern that is begun", () => {
  it("has the sizes and measurements that were chosen from a table, and the fabric as typed", () => {
    const chosen = { first: "size-l", last: "size-s", ofRange: "high", measurements: ["upper-arm", "nothing-known"] };
    const made = begun({ tables: { "cyc-woman": chosen } });
    expect(made).toMatchObject({
      ok: true,
      document: {
        name: "Heron vest",
        craft: "knitting",
        sizeBy: "bust",
        fabrics: [
          { label: "Half linen", toolMm: 4.5, gauge: { stitches: 17.5, rows: 24, overCm: 10.16 }, worked: "flat" },
        ],
        // By hand: the upper ends 34, 38 and 42 in.
        sizes: [
          { label: "S", body: { bust: 34 * 2.54, "upper-arm": 10.25 * 2.54 } },
          { label: "M", body: { bust: 38 * 2.54, "upper-arm": 11 * 2.54 } },
          { label: "L", body: { bust: 42 * 2.54, "upper-arm": 12 * 2.54 } },
        ],
        counts: [],
        measurements: [],
      },
    });
  });

  it("reads the designer’s own sizes in their unit", () => {
    const own = { sizesFrom: "own", own: { body: "Bust", sizes: "M 37\nL 104 cm" } };
    const made = begun(own, "in");
    expect(made).toMatchObject({
      ok: true,
      document: { sizes: [{ body: { bust: 37 * 2.54 } }, { body: { bust: 104 } }] },
    });
  });
});

describe("what a document refuses", () => {
  it("is told where it was typed", () => {
    expect(begun({ name: "Heron\u0000" })).toEqual({
      ok: false,
      faults: { name: ["This contains a character that cannot be stored."] },
    });
    expect(begun({ sizesFrom: "own", own: { body: "Bust", sizes: "M\u0000 94" } })).toMatchObject({
      faults: { "own.sizes": [expect.stringMatching(/cannot be stored/)] },
    });
  });
});

describe("a form that is not whole", () => {
  it("says what is missing at every field at once", () => {
    const parsed = newPatternSchema.safeParse({
      formKey: FORM.formKey,
      sizesFrom: "own",
      own: {},
      craft: "crochet",
      fabric: {},
    });
    const paths = parsed.error?.issues.map(({ path }) => path.join(".")).toSorted();
    expect(paths).toEqual([
      "fabric.label",
      "fabric.over",
      "fabric.rows",
      "fabric.stitches",
      "fabric.toolMm",
      "fabric.worked",
      "name",
      "own.body",
      "own.sizes",
    ]);
  });

  it("says what is wrong with a list of sizes, and with numbers that are none", () => {
    const wrong = {
      sizesFrom: "own",
      own: { body: " ", sizes: "M" },
      fabric: { ...FABRIC, stitches: "many", rows: "0" },
    };
    const whole = { ...wrong, fabric: FABRIC };
    const says = (form: object) =>
      newPatternSchema.safeParse({ ...FORM, ...form }).error?.issues.map(({ message }) => message);
    expect(says(wrong)).toEqual(expect.arrayContaining(["“0” cannot be right here."]));
    expect(says(whole)).toEqual([
      "Enter the body measurement that orders the sizes, such as Bust.",
      "“M” is not a name and a body. Write it like M 94.",
    ]);
  });
});
