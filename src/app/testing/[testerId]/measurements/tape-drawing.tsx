"use client";

import type { ComponentProps } from "react";
import { PieceDrawing } from "@/features/patterns/drawing/piece-drawing";
import { useIsOpenRow } from "@/features/testing/report/steps/measured-row";

type TapeDrawingProps = Omit<ComponentProps<typeof PieceDrawing>, "children"> & { readonly litMeasurement: string };

/** Where the tape goes for a measurement, drawn once its row is open. */
export function TapeDrawing(props: TapeDrawingProps) {
  if (!useIsOpenRow(props.litMeasurement)) return null;
  return (
    <div className="my-4 max-w-72">
      <PieceDrawing {...props} />
    </div>
  );
}
