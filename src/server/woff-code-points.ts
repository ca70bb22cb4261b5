import { inflateSync } from "node:zlib";

/**
 * The characters that a font has a picture for.
 *
 * @param file a font in WOFF 1.0 with a Unicode character map of format 4, as fonts of the basic plane have.
 * @returns their code points.
 * @throws {Error} where the font has no such map.
 * @see WOFF File Format 1.0 (W3C 2012), 3 to 5; OpenType 1.9, "cmap", format 4.
 */
export function woffCodePoints(file: Buffer): Set<number> {
  const cmap = woffTable(file, "cmap");
  const subtables = Array.from({ length: cmap.readUInt16BE(2) }, (_, index) => cmap.readUInt32BE(8 + 8 * index));
  const format4 = subtables.find((index) => cmap.readUInt16BE(index) === 4);
  if (format4 === undefined) throw new Error("a font without a character map of format 4");
  return readFormat4(cmap.subarray(format4));
}

function woffTable(file: Buffer, tag: string): Buffer {
  const tables = Array.from({ length: file.readUInt16BE(12) }, (_, index) => 44 + 20 * index);
  const entry = tables.find((index) => file.toString("latin1", index, index + 4) === tag);
  if (entry === undefined) throw new Error(`a font without a table ${tag}`);
  const [offset, packed, whole] = [4, 8, 12].map((index) => file.readUInt32BE(entry + index));
  const bytes = file.subarray(offset ?? 0, (offset ?? 0) + (packed ?? 0));
  return packed === whole ? bytes : inflateSync(bytes);
}

/** Segments of characters: their ends, their starts, what is added to a character, where else its glyph stands. */
function readFormat4(map: Buffer): Set<number> {
  const twice = map.readUInt16BE(6);
  const [ends, starts] = [14, 16 + twice];
  const [deltas, offsets] = [starts + twice, starts + 2 * twice];
  const codePoints = new Set<number>();
  for (let index = 0; index < twice; index += 2) {
    const [start, end] = [map.readUInt16BE(starts + index), map.readUInt16BE(ends + index)];
    const [delta, offset] = [map.readUInt16BE(deltas + index), map.readUInt16BE(offsets + index)];
    for (let code = start; code <= end && code < 0xffff; code += 1) {
      const glyph = offset === 0 ? code : map.readUInt16BE(offsets + index + offset + 2 * (code - start));
      if (glyph !== 0 && ((glyph + delta) & 0xffff) !== 0) codePoints.add(code);
    }
  }
  return codePoints;
}
