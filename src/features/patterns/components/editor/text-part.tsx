"use client";

export function TextPart() {
  return null;
}
