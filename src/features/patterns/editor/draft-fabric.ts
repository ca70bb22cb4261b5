import type { DraftPattern } from "@/engine/editing";

/** A fabric as it is being edited. */
export type DraftFabric = DraftPattern["fabrics"][number];
