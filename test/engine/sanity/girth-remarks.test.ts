import { describe, expect, it } from "vitest";
import { bodies, fabricLike, kinds, measurement, remarks, withCounts } from "./counted-pattern";

describe("a sleeve and its armhole", () => {
  const arm = measurement("sleeve", { label: "Upper arm", girth: true });
  const armhole = measurement("armhole", { label: "Armhole depth" });

  it("is asked about where the sleeve is wider than twice the depth and the tolerances", () => {
    // By hand: L has 88 ÷ 2 = 44 cm, twice 40 ÷ 2 = 40 cm; tolerances 1 + 2 × 1 = 3 cm.
    const pattern = withCounts({ sleeve: [70, 88], armhole: [38, 40] }, [arm, armhole]);
    expect(remarks(pattern)).toEqual([
      {
        kind: "sleeve-and-armhole",
        path: "measurements[0]",
        size: "large",
        says: "In L the sleeve is 44.0 cm around at the upper arm and the armhole about 40.0 cm, twice its depth. Unless stitches are added at the underarm, the sleeve does not fit into it.",
      },
    ]);
  });

  it("is left alone where it fits, or lies within the tolerances", () => {
    expect(kinds(withCounts({ sleeve: [70, 86], armhole: [38, 40] }, [arm, armhole]))).toEqual([]);
  });

  it("is known by the body measurements that targets name, whatever their labels", () => {
    const named = [
      { ...arm, label: "Oberarm", target: { body: "upper-arm", easeCm: 12 } },
      { ...armhole, label: "Armloch", target: { body: "armhole-depth", easeCm: 1 } },
    ];
    const sizes = bodies(
      { bust: 90, "upper-arm": 23, "armhole-depth": 18 },
      { bust: 110, "upper-arm": 32, "armhole-depth": 19 },
    );
    expect(kinds(withCounts({ sleeve: [70, 88], armhole: [38, 40] }, named, { sizes }))).toEqual([
      "sleeve-and-armhole",
    ]);
  });

  it("uses an armhole that is measured around as it is", () => {
    const around = { ...armhole, label: "Armhole", girth: true };
    expect(kinds(withCounts({ sleeve: [70, 88], armhole: [76, 80] }, [arm, around]))).toEqual(["sleeve-and-armhole"]);
    expect(kinds(withCounts({ sleeve: [70, 88], armhole: [76, 86] }, [arm, around]))).toEqual([]);
  });

  it("is not guessed at under another name, nor where there are two armholes", () => {
    const length = { ...armhole, label: "Length from armhole to hem" };
    expect(kinds(withCounts({ sleeve: [70, 88], armhole: [38, 40] }, [arm, length]))).toEqual([]);
    const second = { ...armhole, id: "second" };
    expect(kinds(withCounts({ sleeve: [70, 88], armhole: [38, 40] }, [arm, armhole, second]))).toEqual([]);
  });
});

describe("a neck and the head", () => {
  const neck = measurement("neck", { label: "Neck opening", girth: true });

  it("is asked about where no head passes it", () => {
    // ASTM D5585-11, read: at a bust of 35 1/4 in (89.5 cm) the head is 21 3/4 in, 55.2 cm. By hand: 80 ÷ 2 × 1.3 = 52.
    const [found, ...more] = remarks(withCounts({ neck: [80, 90] }, [neck]));
    expect(more).toEqual([]);
    expect(found).toMatchObject({ kind: "neck-and-head", path: "measurements[0]", size: "small" });
    expect(found?.says).toBe(
      "In S the neck reaches 52.0 cm (assuming that it stretches to 1.3 times its size, as no stretch is stated for “Main”), and a head of 55.2 cm must pass it. Unless it opens, it is too small to put on.",
    );
  });

  it("passes with the stretch that is stated, and not with less", () => {
    const stretch = (across: number) => fabricLike({ wornStretch: { across, along: 1 } });
    expect(kinds(withCounts({ neck: [80, 90] }, [neck], stretch(1.4)))).toEqual([]);
    expect(kinds(withCounts({ neck: [100, 100] }, [neck], stretch(1.05)))).toEqual(["neck-and-head"]);
    expect(kinds(withCounts({ neck: [100, 100] }, [neck]))).toEqual([]);
  });

  it("goes by the pattern’s own head where it has one, and is silent for a bust below the published ones", () => {
    const small = bodies({ bust: 60 }, { bust: 70 });
    expect(kinds(withCounts({ neck: [60, 60] }, [neck], { sizes: small }))).toEqual([]);
    const heads = bodies({ bust: 60, head: 50 }, { bust: 70, head: 51 });
    expect(kinds(withCounts({ neck: [60, 60] }, [neck], { sizes: heads }))).toEqual(["neck-and-head"]);
  });

  it("is not guessed at where a neck is measured straight across", () => {
    expect(kinds(withCounts({ neck: [40, 40] }, [{ ...neck, label: "Neck width", girth: false }]))).toEqual([]);
  });
});

describe("negative ease and stretch", () => {
  const bust = measurement("bust", { girth: true, target: { body: "bust", easeCm: -28 } });

  it("is asked about where the fabric does not reach around the body", () => {
    // By hand: 124 ÷ 2 = 62 cm, × 1.3 = 80.6 of 90; 164 ÷ 2 × 1.3 = 106.6 of 110.
    expect(remarks(withCounts({ bust: [124, 164] }, [bust]))).toEqual([
      {
        kind: "ease-and-stretch",
        path: "measurements[0].target.easeCm",
        size: "small",
        says: "In S (also in L) “bust” must go around 90.0 cm and reaches 80.6 cm (assuming that it stretches to 1.3 times its size, as no stretch is stated for “Main”).",
      },
    ]);
  });

  it("is left alone within the stretch, with positive ease, and for a length, which may be short", () => {
    const stretchy = fabricLike({ wornStretch: { across: 1.5, along: 1 } });
    expect(kinds(withCounts({ bust: [124, 164] }, [bust], stretchy))).toEqual([]);
    expect(kinds(withCounts({ bust: [124, 164] }, [{ ...bust, girth: false }]))).toEqual([]);
    const roomy = { ...bust, target: { body: "bust", easeCm: 4 } };
    expect(kinds(withCounts({ bust: [188, 228] }, [roomy]))).toEqual([]);
  });

  it("goes by a stated stretch, even where it is less than is usual", () => {
    const stiff = fabricLike({ wornStretch: { across: 1, along: 1 } });
    // 172 ÷ 2 = 86 of 90, 212 ÷ 2 = 106 of 110: more than the tolerance of 1.
    expect(kinds(withCounts({ bust: [172, 212] }, [bust], stiff))).toEqual(["ease-and-stretch"]);
    expect(kinds(withCounts({ bust: [172, 212] }, [bust]))).toEqual([]);
  });
});
