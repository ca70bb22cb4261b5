"use client";

export function LengthsPart() {
  return null;
}
