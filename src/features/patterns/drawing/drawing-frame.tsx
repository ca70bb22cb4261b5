import { useId, type ReactNode } from "react";
import type { Point } from "@/engine/drawing";

/** What a frame encloses, cm. */
export interface Extent {
  readonly widthCm: number;
  readonly heightCm: number;
}

interface DrawingFrameProps {
  readonly extent: Extent;
  /** The length of the full available width, cm: drawings that share it are at one scale. */
  readonly fullWidthCm: number;
  readonly title: string;
  readonly description: string;
  /** Drawn in cm, y downward from the piece's lowest point at 0. */
  readonly ground: ReactNode;
  /** Drawn in pixels at positions in per cent, so that letters are the same size on every screen. */
  readonly children?: ReactNode;
}

/** A drawing to scale, as wide as its share of the available width. */
export function DrawingFrame({ extent, fullWidthCm, title, description, ground, children }: DrawingFrameProps) {
  const id = useId();
  const { widthCm, heightCm } = extent;
  return (
    <svg
      role="img"
      aria-labelledby={`${id}-title ${id}-description`}
      className="numbers mx-auto block h-auto overflow-visible text-[0.8125rem]"
      style={{ width: `${(100 * widthCm) / fullWidthCm}%`, aspectRatio: `${widthCm} / ${heightCm}` }}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-description`}>{description}</desc>
      <svg
        width="100%"
        height="100%"
        viewBox={`${-widthCm / 2} ${-heightCm} ${widthCm} ${heightCm}`}
        preserveAspectRatio="none"
        className="overflow-visible"
      >
        {ground}
      </svg>
      {children}
    </svg>
  );
}

/** The position of a point of a piece in its frame, in per cent. */
export function placeIn({ widthCm, heightCm }: Extent, { xCm, yCm }: Point): { x: string; y: string } {
  return { x: `${50 + (100 * xCm) / widthCm}%`, y: `${100 - (100 * yCm) / heightCm}%` };
}
