"use client";

import type { ComponentProps } from "react";
import { ViewDrawing } from "@/features/patterns/drawing/view-drawing";
import { useIsOpenRow } from "@/features/testing/report/steps/measured-row";

type TapeDrawingProps = Omit<ComponentProps<typeof ViewDrawing>, "children" | "onlyMeasurements"> & {
  readonly litMeasurement: string;
};

/** Where the tape goes for a measurement, drawn once its row is open. */
export function TapeDrawing(props: TapeDrawingProps) {
  const { litMeasurement } = props;
  if (!useIsOpenRow(litMeasurement)) return null;
  return (
    <div className="my-4 max-w-72">
      <ViewDrawing {...props} onlyMeasurements={new Set([litMeasurement])} />
    </div>
  );
}
