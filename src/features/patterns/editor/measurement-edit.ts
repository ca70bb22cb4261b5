import type { DraftPattern } from "@/engine/editing";

export type DraftMeasurement = DraftPattern["measurements"][number];

export interface MeasurementEdit {
  readonly measurement: DraftMeasurement;
  readonly i: number;
  /** @param field where it is typed, in the measurement; null for a separate edit. */
  readonly onMeasurement: (next: DraftMeasurement, field: string | null) => void;
}
