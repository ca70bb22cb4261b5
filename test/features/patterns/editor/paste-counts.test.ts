import { describe, expect, it } from "vitest";
import { withWholeRule } from "@/features/patterns/editor/paste-counts";

const count = { id: "body", label: "Body", fabric: "main", direction: "stitches" } as const;

describe("a multiple that is typed as charts write it", () => {
  it.each(["8 + 3", "8+3", "8 plus 3", "8n + 3", "multiple of 8 sts + 3 sts", " 8 stitches + 3 "])(
    "“%s” is 8 and 3 more",
    (text) => {
      expect(withWholeRule(count, text)).toEqual({ ...count, repeat: { of: "8", plus: "3" } });
    },
  );

  it.each(["8", "8 +", "+ 3", "8 - 3", "8 + 3 + 2", ""])("“%s” stays as it is typed", (text) => {
    expect(withWholeRule(count, text)).toBe(count);
  });
});
