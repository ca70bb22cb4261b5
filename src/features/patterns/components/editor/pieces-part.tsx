"use client";

export function PiecesPart() {
  return null;
}
