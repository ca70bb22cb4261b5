"use client";

export function CountsPart() {
  return null;
}
