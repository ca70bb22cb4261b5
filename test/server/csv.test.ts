import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { csvDownload, csvText } from "@/server/csv";

describe("a table for a spreadsheet", () => {
  it("holds no text that would be run, also where it has a line break in it", () => {
    const texts = ["=1+1", "+1", "-1", "@A1", "\t=1", "\r=1", "\n=1", "＝1", "＠A1", '=HYPERLINK("x")\nand more'];
    const read = Papa.parse<string[]>(csvText(texts.map((said) => ({ said }))));
    expect(read.data.slice(1)).toEqual(texts.map((text) => [`'${text}`]));
  });

  it("leaves numbers numbers, negative ones too, and other text as it is", () => {
    expect(csvText([{ gap: -2.5, says: "a - b, “c”", reports: 3 }])).toBe('gap,says,reports\r\n-2.5,"a - b, “c”",3');
  });

  it("keeps formulas out of its head line", () => {
    expect(csvText([{ "=cmd": 1 }])).toBe('"\'=cmd"\r\n1');
  });

  it("comes under the name of what it is of, and with the mark by which spreadsheets know its letters", async () => {
    const answer = csvDownload(["Größe", "Frühling", "differences"], csvText([{ tester: "Zoë" }]));
    expect(answer.headers.get("content-disposition")).toContain('filename="gro-e-fruhling-differences.csv"');
    // The UTF-8 byte-order mark: EF BB BF.
    const bytes = new Uint8Array(await answer.arrayBuffer());
    expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(new TextDecoder().decode(bytes)).toBe("tester\r\nZoë");
  });
});
