"use client";

export function MeasurementsPart() {
  return null;
}
