"use client";

export function FabricsPart() {
  return null;
}
