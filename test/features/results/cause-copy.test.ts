import { describe, expect, it } from "vitest";
import type { Cause, CauseInput } from "../../../src/engine/gaps";
import { causeSentence, explainedWords, rivalWords } from "../../../src/features/results/cause-copy";
import { saltmarshCall } from "../../../prisma/demo/saltmarsh-call";

const { pattern } = saltmarshCall().call;

function cause(input: CauseInput, estimate: number, unit: Cause["unit"] = "cm"): Cause {
  return { ...input, estimate, standardError: 0.1, unit, explains: 0.4, evidence: 5, restsOn: [], rivals: [] };
}

const says = (named: Cause, unit: "cm" | "in" = "cm") => causeSentence(named, pattern, unit).replaceAll("\u00a0", " ");

describe("a cause in a sentence", () => {
  it.each<[Cause, string]>([
    // The neck band is stated as something that takes, so a negative error takes more.
    [cause({ kind: "allowance", id: "neck-band" }, -0.8), "“Neck band” takes 0.8 cm more than stated (± 0.1 cm)."],
    [cause({ kind: "allowance", id: "neck-band" }, 0.8), "“Neck band” takes 0.8 cm less than stated (± 0.1 cm)."],
    [
      cause({ kind: "settle", id: "all", direction: "stitches" }, 0.03, "factor"),
      "Every fabric comes out 3 % (± 10 %) wider in garments than in swatches.",
    ],
    [
      cause({ kind: "settle", id: "all", direction: "rows" }, -0.025, "factor"),
      "Every fabric comes out 2.5 % (± 10 %) shorter in garments than in swatches.",
    ],
    [
      cause({ kind: "count", id: "body", size: "size-2x" }, 7, "stitches"),
      "In size 2X the instructions give 7 (± 0.1) more stitches for “Body stitches” than your grading.",
    ],
    [
      cause({ kind: "offset", id: "upper-arm" }, -1.5),
      "“Upper arm” comes out 1.5 cm too narrow in every size (± 0.1 cm).",
    ],
    [
      cause({ kind: "step", id: "upper-arm" }, -2),
      "“Upper arm” grows too little per size: 2 cm too narrow in the largest (± 0.1 cm), and 2 cm too wide in the smallest.",
    ],
    [
      cause({ kind: "from", id: "upper-arm", size: "size-xl" }, 2),
      "“Upper arm” is 2 cm too wide from size XL up (± 0.1 cm).",
    ],
  ])("%j", (named, sentence) => {
    expect(says(named)).toBe(sentence);
  });

  it("uses inches for readers of inches: 2.54 cm is 1 in, and nothing is finer than an eighth", () => {
    const sentence = says(cause({ kind: "offset", id: "upper-arm" }, 2.54), "in");
    expect(sentence).toBe("“Upper arm” comes out 1 in too wide in every size (± 1/8 in).");
  });

  it("describes stretch when worn", () => {
    const [fabric] = pattern.fabrics;
    const stretch = cause({ kind: "stretch", id: fabric?.id ?? "", direction: "stitches" }, -0.05, "factor");
    expect(says(stretch)).toBe(`“${fabric?.label}” stretches 5 % (± 10 %) less than stated when worn.`);
  });
});

describe("the words beside a cause", () => {
  it.each<[CauseInput, string]>([
    [{ kind: "allowance", id: "neck-band" }, "the edging or seam “Neck band”"],
    [{ kind: "settle", id: "all", direction: "rows" }, "how every fabric changes in length from swatch to garment"],
    [{ kind: "count", id: "body", size: "size-2x" }, "“Body stitches” in size 2X"],
    [{ kind: "offset", id: "upper-arm" }, "“Upper arm” in every size"],
    [{ kind: "step", id: "upper-arm" }, "how much “Upper arm” grows per size"],
    [{ kind: "from", id: "upper-arm", size: "size-xl" }, "“Upper arm” from size XL up"],
  ])("name the rival %j", (rival, words) => {
    expect(rivalWords(rival, pattern)).toBe(words);
  });

  it("count the certain differences that it explains, and call them most only where they are", () => {
    const says = (explained: number, off: number) => explainedWords({ explained, off });
    expect(says(0, 0)).toBe("No difference is certain yet.");
    expect(says(0, 7)).toBe("It explains none of the differences that are certain.");
    expect(says(1, 1)).toBe("It explains the one difference.");
    expect(says(7, 7)).toBe("It explains all 7 differences.");
    expect(says(4, 7)).toBe("It explains most of the differences: 4 of 7.");
    expect(says(4, 8)).toBe("It explains 4 of the 8 differences.");
  });

  it("are only perhaps, where a single tester carries it", () => {
    const named = cause({ kind: "count", id: "body", size: "size-2x" }, 7, "stitches");
    const carried = { ...named, restsOn: [{ tester: "t1", measurement: "bust" }] };
    expect(says(carried)).toMatch(/^Perhaps in size 2X the instructions give 7/);
  });
});
