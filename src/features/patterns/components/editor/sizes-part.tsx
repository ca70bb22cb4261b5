"use client";

export function SizesPart() {
  return null;
}
