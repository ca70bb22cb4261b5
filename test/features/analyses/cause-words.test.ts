import { describe, expect, it } from "vitest";
import type { Cause, CauseInput } from "@/engine/gaps";
import { causeSentence, rivalWords, shareWords } from "@/features/analyses/cause-words";
import { saltmarshCall } from "../../../prisma/demo/saltmarsh-call";

const { pattern } = saltmarshCall().call;

function cause(input: CauseInput, estimate: number, unit: Cause["unit"] = "cm"): Cause {
  return { ...input, estimate, standardError: 0.1, unit, explains: 0.4, evidence: 5, rivals: [] };
}

const says = (named: Cause, unit: "cm" | "in" = "cm") => causeSentence(named, pattern, unit).replaceAll("\u00a0", " ");

describe("a cause in a sentence", () => {
  it.each<[Cause, string]>([
    // The neck band is stated as something that takes, so a negative error takes more.
    [cause({ kind: "allowance", id: "neck-band" }, -0.8), "“Neck band” takes 0.8 cm more than stated (± 0.1 cm)."],
    [cause({ kind: "allowance", id: "neck-band" }, 0.8), "“Neck band” takes 0.8 cm less than stated (± 0.1 cm)."],
    [
      cause({ kind: "settle", id: "all", direction: "stitches" }, 0.03, "factor"),
      "Every fabric comes out 3 % (± 10 %) wider in the garment than in its swatches.",
    ],
    [
      cause({ kind: "settle", id: "all", direction: "rows" }, -0.025, "factor"),
      "Every fabric comes out 2.5 % (± 10 %) shorter in the garment than in its swatches.",
    ],
    [
      cause({ kind: "count", id: "body", size: "size-2x" }, 7, "stitches"),
      "In size 2X the instructions make 7 (± 0.1) stitches more of “Body stitches” than the grading says.",
    ],
    [
      cause({ kind: "offset", id: "upper-arm" }, -1.5),
      "“Upper arm” comes out 1.5 cm too small in every size (± 0.1 cm).",
    ],
    [
      cause({ kind: "step", id: "upper-arm" }, -2),
      "“Upper arm” has too little added per size: 2 cm too small in the largest (± 0.1 cm), as much the other way in the smallest.",
    ],
    [
      cause({ kind: "from", id: "upper-arm", size: "size-xl" }, 2),
      "“Upper arm” is 2 cm too big from size XL upward (± 0.1 cm).",
    ],
  ])("%j", (named, sentence) => {
    expect(says(named)).toBe(sentence);
  });

  it("speaks inches to those who work in them: 2.54 cm are 1 in, and nothing is told finer than an eighth", () => {
    const sentence = says(cause({ kind: "offset", id: "upper-arm" }, 2.54), "in");
    expect(sentence).toBe("“Upper arm” comes out 1 in too big in every size (± 1/8 in).");
  });

  it("tells of stretch when worn", () => {
    const [fabric] = pattern.fabrics;
    const stretch = cause({ kind: "stretch", id: fabric?.id ?? "", direction: "stitches" }, -0.05, "factor");
    expect(says(stretch)).toBe(`“${fabric?.label}” stretches 5 % (± 10 %) less than stated when worn.`);
  });
});

describe("the words beside a cause", () => {
  it.each<[CauseInput, string]>([
    [{ kind: "allowance", id: "neck-band" }, "the allowance “Neck band”"],
    [{ kind: "settle", id: "all", direction: "rows" }, "how every fabric settles lengthwise"],
    [{ kind: "count", id: "body", size: "size-2x" }, "“Body stitches” in size 2X"],
    [{ kind: "offset", id: "upper-arm" }, "“Upper arm” in every size"],
    [{ kind: "step", id: "upper-arm" }, "what is added per size to “Upper arm”"],
    [{ kind: "from", id: "upper-arm", size: "size-xl" }, "“Upper arm” from size XL upward"],
  ])("name the rival %j", (rival, words) => {
    expect(rivalWords(rival, pattern)).toBe(words);
  });

  it("say in plain words how much it accounts for", () => {
    expect([0.9, 0.6, 0.3, 0.1, 0.01].map(shareWords)).toEqual([
      "Most of what is wrong comes from it.",
      "Most of what is wrong comes from it.",
      "A good part of what is wrong comes from it.",
      "A small part of what is wrong comes from it.",
      "Little of what is wrong comes from it.",
    ]);
  });
});
