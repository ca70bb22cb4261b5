import { writeFileSync } from "node:fs";
import { chromium } from "playwright";
import { CHROMIUM_OPTIONS } from "../test/install-chromium";

/** A ruler, the tolerance as a band above it, and the measured value as a dot: what a cell of the results shows. */
function mark(cornerRadius: number): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64">
  <rect width="64" height="64" rx="${cornerRadius}" fill="#f6f0e4" />
  <rect x="20" y="14" width="24" height="30" fill="#dccfb9" />
  <path d="M11 46h42M13 46v-9M22.5 46v-5M32 46v-9M41.5 46v-5M51 46v-9" fill="none" stroke="#231d18" stroke-width="4" stroke-linecap="round" />
  <circle cx="38" cy="23" r="7.5" fill="#9c2430" />
</svg>
`;
}

const PICTURES = [
  { file: "favicon.ico", pixels: 32, cornerRadius: 12 },
  // Phones cut the corners themselves.
  { file: "apple-touch-icon.png", pixels: 180, cornerRadius: 0 },
  { file: "icon-192.png", pixels: 192, cornerRadius: 0 },
  { file: "icon-512.png", pixels: 512, cornerRadius: 0 },
] as const;

/** An icon file around one PNG, as every browser of today reads it. */
function iconFile(png: Buffer, pixels: number): Buffer {
  const header = Buffer.alloc(22);
  header.writeUInt16LE(1, 2);
  header.writeUInt16LE(1, 4);
  header.writeUInt8(pixels, 6);
  header.writeUInt8(pixels, 7);
  header.writeUInt16LE(1, 10);
  header.writeUInt16LE(32, 12);
  header.writeUInt32LE(png.length, 14);
  header.writeUInt32LE(header.length, 18);
  return Buffer.concat([header, png]);
}

writeFileSync("public/icon.svg", mark(12));
const browser = await chromium.launch(CHROMIUM_OPTIONS);
try {
  for (const { file, pixels, cornerRadius } of PICTURES) {
    const page = await browser.newPage({ viewport: { width: pixels, height: pixels } });
    await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${mark(cornerRadius)}`);
    const png = await page.screenshot({ omitBackground: true });
    writeFileSync(`public/${file}`, file.endsWith(".ico") ? iconFile(png, pixels) : png);
  }
} finally {
  await browser.close();
}
