import fc from "fast-check";
import { expect, it } from "vitest";
import { sameOriginPath } from "../../src/server/same-origin-path";

it.each([
  ["/account", "/account"],
  ["/patterns/1?size=M#top", "/patterns/1?size=M#top"],
  ["/account?_rsc=abc", "/account"],
  [undefined, "/"],
  ["", "/"],
  ["account", "/"],
  ["https://elsewhere.example/", "/"],
  ["//elsewhere.example/account", "/"],
  ["/\\elsewhere.example", "/"],
  ["/\t/elsewhere.example", "/"],
  ["/./\\elsewhere.example", "/"],
  ["javascript:alert(1)", "/"],
])("of %j is %j", (given, path) => {
  expect(sameOriginPath(given)).toBe(path);
});

it("stays on this site whatever is asked for", () => {
  const parts = fc.constantFrom(
    "/",
    "\\",
    ".",
    "..",
    "\t",
    "\n",
    "@",
    ":",
    "?",
    "#",
    "elsewhere.example",
    "http:",
    "%2f",
  );
  let onward = 0;
  fc.assert(
    fc.property(fc.array(parts, { maxLength: 8 }), (asked) => {
      const path = sameOriginPath(asked.join(""));
      if (path !== "/") onward += 1;
      expect(new URL(path, "http://localhost:3000").origin).toBe("http://localhost:3000");
    }),
    { numRuns: 5_000 },
  );
  expect(onward).toBeGreaterThan(100);
});
