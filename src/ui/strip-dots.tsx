"use client";

import { stripAnchor } from "./dot-lanes";

export type DotMark = "full" | "hollow" | "square" | "cross";

/** A dot on a strip, with the text shown on hover or focus. */
interface PlacedDot {
  readonly key: string;
  /** Percent of the strip's width. */
  readonly x: number;
  readonly y: number;
  readonly mark: DotMark;
  readonly says: string;
}

interface StripDotsProps {
  readonly dots: readonly PlacedDot[];
  /** Height of a dot's text. */
  readonly wordsY: number;
  /** Whether each can be stepped to with the Tab key. */
  readonly areStops: boolean;
}

/** Dots with names; a client component, so that many are sent as plain numbers. */
export function StripDots({ dots, wordsY, areStops }: StripDotsProps) {
  return dots.map(({ key, x, y, mark, says }) => (
    <g key={key} tabIndex={areStops ? 0 : undefined} role="img" aria-label={says} className="strip-dot">
      <title>{says}</title>
      <text x={`${x}%`} y={wordsY} textAnchor={stripAnchor(x)}>
        {says}
      </text>
      <svg x={`${x}%`} y={y} overflow="visible">
        <circle r="8" />
        <DotShape mark={mark} />
      </svg>
    </g>
  ));
}

/** A dot about the origin; its shape carries its meaning. */
export function DotShape({ mark }: { readonly mark: DotMark }) {
  switch (mark) {
    case "full":
      return <circle r="4" className="fill-ink" />;
    case "hollow":
      return <circle r="3.6" strokeWidth="1.6" className="fill-sheet stroke-ink" />;
    case "square":
      return <rect x="-3.8" y="-3.8" width="7.6" height="7.6" className="fill-ink" />;
    case "cross":
      return <path d="M-3.5 -3.5L3.5 3.5M-3.5 3.5L3.5 -3.5" strokeWidth="1.6" className="stroke-soft" />;
  }
}
