import { randomUUID } from "node:crypto";
import type { World } from "./access-world";

/** Reports that are understood as far as the question whose they are. */
export function pastedReports({ patternId, callId }: World) {
  const choices = { turned: false, headerRow: 0, columns: [], swatchOver: "10 cm", washed: true, leaveUnread: false };
  return { patternId, callId, text: "", choices, confirmed: false, tableKey: randomUUID() };
}

/** An invitation to a free place of somebody who has never applied. */
export function freePlace({ callId }: World) {
  const days = { endsOn: "2090-01-01", startOn: "2090-01-02", swatchBy: "2090-01-03", reportBy: "2090-01-04" };
  return { callId, size: "small", applicationId: randomUUID(), ...days };
}

/** A pattern to begin that is whole but for a number that its document refuses. */
export function refusedPattern() {
  const fabric = { label: "Main", toolMm: "4", stitches: "20", rows: "25", over: "10 cm", worked: "flat" };
  const fields = Object.entries(fabric).map(([name, value]) => [`fabric.${name}`, value]);
  const own = { "own.body": "Bust", "own.sizes": "S 86" };
  const whole = { formKey: randomUUID(), name: "Begun \u0000", craft: "crochet", sizesFrom: "own", ...own };
  return { ...whole, ...Object.fromEntries(fields) };
}

/** A template that is whole but for a gauge that no template is made for. */
export function refusedTemplate() {
  const gauge = { stitches: "2", rows: "25", over: "10 cm", toolMm: "4" };
  const wishes = { ease: "8", length: "35", edging: "5", sleeve: "long", repeat: "1" };
  const sizes = { sizesFrom: "own", "own.body": "Bust", "own.sizes": "S 86" };
  return { formKey: randomUUID(), template: "tank", name: "Begun", craft: "crochet", ...gauge, ...wishes, ...sizes };
}

/** Nobody’s. */
export const WRONG = { email: "nobody@example.org", password: "a wrong password" };
