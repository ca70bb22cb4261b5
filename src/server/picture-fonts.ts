import "server-only";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { woffCodePoints } from "./woff-code-points";

const FOLDER = join(process.cwd(), "node_modules", "@fontsource");
const SCRIPTS = ["latin", "latin-ext", "vietnamese", "greek", "cyrillic"] as const;
const FONTS = [
  { family: "Serif", folder: "source-serif-4", weight: 600 },
  { family: "Sans", folder: "source-sans-3", weight: 400 },
] as const;

export interface PictureFont {
  readonly name: string;
  readonly data: ArrayBuffer;
  readonly weight: 400 | 600;
  readonly style: "normal";
}

/** Our fonts for `next/og`, script by script: what one file lacks is looked for in the others. */
export function pictureFonts(): Promise<PictureFont[]> {
  loaded ??= Promise.all(FONTS.flatMap((font) => SCRIPTS.map((script) => loadFont(font, script))));
  return loaded;
}

/**
 * A text as our fonts can draw it, for `next/og` fetches whatever they lack from the internet.
 *
 * @returns the text without pictographs and other signs that are not in them; null where letters are not.
 */
export async function drawableText(text: string): Promise<string | null> {
  covered ??= readCovered();
  const known = await covered;
  const characters = Array.from(text.normalize("NFC"));
  const isDrawn = (character: string) => !NEVER_DRAWN.test(character) && known.has(character.codePointAt(0) ?? 0);
  if (characters.some((character) => /\p{L}/u.test(character) && !isDrawn(character))) return null;
  const drawn = characters.map((character) => (isDrawn(character) ? character : " ")).join("");
  return drawn.replace(/\s+/g, " ").trim();
}

/** What may be taken for an emoji, what cannot be seen, and what turns the direction of writing. */
const NEVER_DRAWN =
  /[\p{Extended_Pictographic}\p{Emoji_Modifier}\p{Regional_Indicator}\p{Cc}\p{Cf}\p{Zl}\p{Zp}\uFE0F\u20E3]/u;

let loaded: Promise<PictureFont[]> | undefined;
let covered: Promise<ReadonlySet<number>> | undefined;

async function loadFont(
  { family, folder, weight }: (typeof FONTS)[number],
  script: (typeof SCRIPTS)[number],
): Promise<PictureFont> {
  const file = await readFile(fontFile({ folder, weight }, script));
  return { name: `${family} ${script}`, data: new Uint8Array(file).buffer, weight, style: "normal" };
}

function fontFile({ folder, weight }: Pick<(typeof FONTS)[number], "folder" | "weight">, script: string): string {
  return join(FOLDER, folder, "files", `${folder}-${script}-${weight}-normal.woff`);
}

/** Characters that each of our fonts has. */
async function readCovered(): Promise<ReadonlySet<number>> {
  const sets = await Promise.all(
    FONTS.map(async (font) => {
      const files = await Promise.all(SCRIPTS.map((script) => readFile(fontFile(font, script))));
      return new Set(files.flatMap((file) => [...woffCodePoints(file)]));
    }),
  );
  return sets.reduce((all, set) => new Set([...all].filter((code) => set.has(code))));
}
