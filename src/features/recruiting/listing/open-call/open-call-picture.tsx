import type { PictureWords } from "./picture-copy";

// Colours from globals.css, which is not loaded where pictures are rendered.
const PAPER = "#f6f0e4";
const INK = "#231d18";
const SOFT = "#665a4e";
const THREAD = "#9c2430";
const SCRIPTS = ["latin", "latin-ext", "vietnamese", "greek", "cyrillic"];
const SERIF = SCRIPTS.map((script) => `Serif ${script}`).join(", ");
const SANS = SCRIPTS.map((script) => `Sans ${script}`).join(", ");

/** The preview picture of a link to a call, 1200 by 630. Rendered by `next/og`, which supports little CSS. */
export function OpenCallPicture({ words: { heading, line, until } }: { readonly words: PictureWords }) {
  return (
    <div
      style={{
        width: "100%",
        height: "100%",
        display: "flex",
        flexDirection: "column",
        justifyContent: "space-between",
        padding: "64px 72px 0",
        background: PAPER,
        color: INK,
        fontFamily: SANS,
        fontSize: 34,
      }}
    >
      <div style={{ display: "flex", justifyContent: "space-between", color: SOFT }}>
        <span style={{ color: THREAD }}>Tester call</span>
        <span style={{ fontFamily: SERIF }}>Sizewright</span>
      </div>
      <div style={{ display: "flex", flexDirection: "column" }}>
        <div style={{ fontFamily: SERIF, fontSize: sizeFor(heading), lineHeight: 1.12, wordBreak: "break-word" }}>
          {heading}
        </div>
        <div style={{ marginTop: 24, color: SOFT, wordBreak: "break-word" }}>{line}</div>
      </div>
      <div style={{ display: "flex", flexDirection: "column" }}>
        <div style={{ fontSize: 38 }}>{until}</div>
        <Ruler />
      </div>
    </div>
  );
}

function sizeFor(heading: string): number {
  if (heading.length <= 24) return 104;
  return heading.length <= 48 ? 80 : 60;
}

/** A tape along the lower edge. */
function Ruler() {
  const marks = Array.from({ length: 49 }, (_, index) => index);
  return (
    <svg width="1056" height="44" viewBox="0 0 1056 44" style={{ marginTop: 28 }}>
      {marks.map((index) => (
        <path key={index} d={`M${index * 22} 44V${index % 4 === 0 ? 8 : 26}`} stroke={INK} strokeWidth="3" />
      ))}
      <circle cx="660" cy="10" r="10" fill={THREAD} />
    </svg>
  );
}
