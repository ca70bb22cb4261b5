/** The tester's gauge in one direction, compared with the pattern's. */
export interface GaugeOutlook {
  readonly over10cm: number;
  readonly over4in: number;
  readonly statedOver10cm: number;
  readonly statedOver4in: number;
  /** `fewer`, `more`: so far off that a measurement exceeds its tolerance; if no measurement depends on it, off by more than 3 %. */
  readonly verdict: "as stated" | "fewer" | "more";
}

/** What one measurement would be at the tester's gauge. */
export interface MeasurementOutlook {
  readonly measurement: string;
  readonly promisedCm: number;
  readonly wouldBeCm: number;
  /** wouldBeCm − promisedCm. */
  readonly differenceCm: number;
  readonly isBeyondTolerance: boolean;
}
