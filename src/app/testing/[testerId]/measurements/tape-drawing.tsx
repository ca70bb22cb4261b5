"use client";

import type { ComponentProps, ReactNode } from "react";
import { PieceDrawing } from "@/features/patterns/drawing/piece-drawing";
import { ViewDrawing } from "@/features/patterns/drawing/view-drawing";
import { useIsOpenRow } from "@/features/testing/report/steps/measured-row";

type Lit<Props> = Omit<Props, "children" | "onlyMeasurements"> & { readonly litMeasurement: string };

/** Where the tape goes for a measurement, drawn once its row is open. */
export function TapeOnView(props: Lit<ComponentProps<typeof ViewDrawing>>) {
  return (
    <OfOpenRow measurement={props.litMeasurement}>
      <ViewDrawing {...props} onlyMeasurements={new Set([props.litMeasurement])} />
    </OfOpenRow>
  );
}

/** The same on a piece of which only its widths and rows are known. */
export function TapeOnShape(props: Lit<ComponentProps<typeof PieceDrawing>>) {
  return (
    <OfOpenRow measurement={props.litMeasurement}>
      <PieceDrawing {...props} />
    </OfOpenRow>
  );
}

function OfOpenRow({ measurement, children }: { readonly measurement: string; readonly children: ReactNode }) {
  return useIsOpenRow(measurement) ? <div className="my-4 max-w-72">{children}</div> : null;
}
