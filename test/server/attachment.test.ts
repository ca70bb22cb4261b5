import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attachment } from "@/server/attachment";

/** The two names that a browser reads from the header. */
function names(header: string): { ascii: string | undefined; whole: string } {
  const whole = /filename\*=UTF-8''(\S+)$/.exec(header)?.[1] ?? "";
  return { ascii: /filename="([^"]*)"/.exec(header)?.[1], whole: decodeURIComponent(whole) };
}

describe("the name of a file that is saved", () => {
  it("says pattern, test and page", () => {
    expect(attachment(["Saltmarsh Tee", "Spring test", "differences"], "csv")).toBe(
      `attachment; filename="saltmarsh-tee-spring-test-differences.csv"; filename*=UTF-8''Saltmarsh%20Tee%2C%20Spring%20test%2C%20differences.csv`,
    );
  });

  it("keeps the letters of every language, beside plain ones for old programs", () => {
    expect(names(attachment(["Großmutters Jäckchen 🧶", "yarn"], "csv"))).toEqual({
      ascii: "gro-mutters-jackchen-yarn.csv",
      whole: "Großmutters Jäckchen 🧶, yarn.csv",
    });
    expect(names(attachment(["كنزة", "Pattern"], "json"))).toEqual({
      ascii: "pattern.json",
      whole: "كنزة, Pattern.json",
    });
  });

  it("holds nothing that a file system refuses or that turns the name around", () => {
    expect(names(attachment(['../../a\\b:c*"?<>|', "x\u202Egnp.exe\r\nset-cookie: a=1"], "csv"))).toEqual({
      ascii: "a-b-c-x-gnp-exe-set-cookie-a-1.csv",
      whole: "a b c, x gnp.exe set-cookie a=1.csv",
    });
  });

  it("is never blank", () => {
    expect(names(attachment(["", " . "], "csv"))).toEqual({ ascii: "sizewright.csv", whole: "sizewright.csv" });
  });

  it("is a header that can be sent, and of a length that can be stored, whatever a pattern is called", () => {
    let tried = 0;
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 200 }), { maxLength: 3 }),
        (units) => {
          tried += 1;
          // Code units as they come: controls, lone surrogates and all.
          const header = attachment(
            units.map((part) => String.fromCharCode(...part)),
            "csv",
          );
          expect(new Headers({ "content-disposition": header }).get("content-disposition")).toBe(header);
          expect(header).toMatch(/^[\x20-\x7e]+$/);
          expect(names(header).ascii).toMatch(/^[a-z0-9-]+\.csv$/);
          expect(names(header).whole).not.toMatch(/[\p{Cc}/\\"]/u);
        },
      ),
    );
    expect(tried).toBeGreaterThanOrEqual(100);
  });
});
