import type { PictureWords } from "./picture-copy";

// Colours from globals.css, which is not loaded where pictures are rendered.
const PAPER = "#f6f0e4";
const INK = "#231d18";
const SOFT = "#665a4e";
const THREAD = "#9c2430";
const SCRIPTS = ["latin", "latin-ext", "vietnamese", "greek", "cyrillic"];
const SERIF = SCRIPTS.map((script) => `Serif ${script}`).join(", ");
const SANS = SCRIPTS.map((script) => `Sans ${script}`).join(", ");

interface OpenCallPictureProps {
  readonly words: PictureWords;
  /** The designer's photo of the garment as JPEG; null where there is none. */
  readonly photo: Buffer | null;
}

/** The preview picture of a link to a call, 1200 by 630. Rendered by `next/og`, which supports little CSS. */
export function OpenCallPicture({ words, photo }: OpenCallPictureProps) {
  return (
    <div style={{ width: "100%", height: "100%", display: "flex", background: PAPER, color: INK, fontFamily: SANS }}>
      <Words words={words} isNarrow={photo !== null} />
      {photo === null ? null : (
        // eslint-disable-next-line @next/next/no-img-element
        <img
          alt=""
          src={`data:image/jpeg;base64,${photo.toString("base64")}`}
          width={PHOTO_WIDTH}
          height={630}
          style={{ objectFit: "cover" }}
        />
      )}
    </div>
  );
}

const PHOTO_WIDTH = 470;
const PADDING = 72;

function Words({
  words: { heading, line, until },
  isNarrow,
}: {
  readonly words: PictureWords;
  readonly isNarrow: boolean;
}) {
  return (
    <div
      style={{
        width: isNarrow ? 1200 - PHOTO_WIDTH : 1200,
        height: "100%",
        display: "flex",
        flexDirection: "column",
        justifyContent: "space-between",
        padding: `64px ${isNarrow ? PADDING / 1.5 : PADDING}px 0`,
        fontSize: isNarrow ? 30 : 34,
      }}
    >
      <div style={{ display: "flex", justifyContent: "space-between", color: SOFT }}>
        <span style={{ color: THREAD }}>Tester call</span>
        <span style={{ fontFamily: SERIF }}>Sizewright</span>
      </div>
      <div style={{ display: "flex", flexDirection: "column" }}>
        <div
          style={{
            fontFamily: SERIF,
            fontSize: sizeFor(heading) * (isNarrow ? 0.75 : 1),
            lineHeight: 1.12,
            wordBreak: "break-word",
          }}
        >
          {heading}
        </div>
        <div style={{ marginTop: 24, color: SOFT, wordBreak: "break-word" }}>{line}</div>
      </div>
      <div style={{ display: "flex", flexDirection: "column" }}>
        <div style={{ fontSize: isNarrow ? 32 : 38 }}>{until}</div>
        <Ruler marks={isNarrow ? 29 : 49} />
      </div>
    </div>
  );
}

function sizeFor(heading: string): number {
  if (heading.length <= 24) return 104;
  return heading.length <= 48 ? 80 : 60;
}

/** A tape along the lower edge. */
function Ruler({ marks }: { readonly marks: number }) {
  const width = 22 * (marks - 1);
  return (
    <svg width={width} height="44" viewBox={`0 0 ${width} 44`} style={{ marginTop: 28 }}>
      {Array.from({ length: marks }, (_, index) => (
        <path key={index} d={`M${index * 22} 44V${index % 4 === 0 ? 8 : 26}`} stroke={INK} strokeWidth="3" />
      ))}
      <circle cx={22 * Math.round(((marks - 1) * 5) / 8)} cy="10" r="10" fill={THREAD} />
    </svg>
  );
}
