import { askableMeasurements, type AskableMeasurement } from "../field-names";
import type { CallListing } from "../loaders";

/** The body measurements that a call's page shows of each size: those that it asks for, and the one that sizes go by. */
export function shownBody({ pattern, document }: Pick<CallListing, "pattern" | "document">): AskableMeasurement[] {
  return askableMeasurements(pattern).filter(({ id }) => document.bodyAsked.includes(id) || id === pattern.sizeBy);
}
