"use client";

export function GradingPart() {
  return null;
}
