import type { LengthUnit } from "@/engine/units";
import type { PlacesQuery } from "../schema";

/** What all parts of the page need. */
export interface PlacesFrame {
  readonly callId: string;
  /** The viewer may assign sizes, and the call is open. */
  readonly mayAct: boolean;
  readonly unit: LengthUnit;
  /** Labels of the body measurements that decide the fit. */
  readonly measurements: readonly string[];
  readonly sizeChoices: readonly { readonly id: string; readonly label: string }[];
  readonly query: PlacesQuery;
  /** This page's address with a changed query. */
  readonly hrefWith: (change: PlacesQuery) => string;
}
