"use client";

import type { StepInSize, StepInSizes } from "@/engine/garment";
import { useEditing } from "./editing";
import type { DraftStep } from "./draft-garment";
import { bySizeText } from "./step-sentence";

interface StepOutcomeProps {
  readonly worked: StepInSizes | undefined;
  /** How many of its inputs are to be fixed. */
  readonly unread: number;
  readonly step: DraftStep;
}

/** Stitches on the needle after a step in every size, and what is wrong with it in which sizes. */
export function StepOutcome({ worked, unread, step }: StepOutcomeProps) {
  const { pattern } = useEditing("pattern");
  const labels = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  const sizes = worked?.sizes ?? [];
  const isWorked = sizes.length > 0 && sizes.every(({ status }) => status !== "absent");
  return (
    <div className="numbers pb-2 pr-3 text-sm" aria-live="polite">
      {unread > 0 ? (
        <p className="font-semibold text-thread">▲ {unread === 1 ? "1 input" : `${unread} inputs`} to fix</p>
      ) : null}
      {isWorked && step.do !== "end" ? <p className="text-soft wrap-anywhere">{needleWords(sizes)}</p> : null}
      {[...messagesBySize(sizes)].map(([message, ids]) => (
        <p key={message} className={ids.isFault ? "mt-1 font-semibold text-thread" : "mt-1 text-soft"}>
          {ids.isFault ? "▲ " : ""}
          {sizes.length > 1 && ids.sizes.length < sizes.length
            ? `${ids.sizes.map((id) => labels.get(id) ?? id).join(", ")}: `
            : ""}
          {message}
        </p>
      ))}
    </div>
  );
}

/** `On the needle: 120 (128, 136), after row 40 (44, 48)`. */
function needleWords(sizes: readonly StepInSize[]): string {
  const parts = [...new Set(sizes.flatMap(({ onNeedle }) => onNeedle.map(({ part }) => part)))];
  const counts = parts.map((part) => {
    const stitches = sizes.map(
      ({ onNeedle }) => Math.round(10 * (onNeedle.find((each) => each.part === part)?.stitches ?? 0)) / 10,
    );
    return `${parts.length > 1 ? `${part} ` : ""}${bySizeText(stitches)}`;
  });
  const rows = sizes.map(({ row }) => row ?? 0);
  const after = rows.some((row) => row > 0) ? `, after row ${bySizeText(rows)}` : "";
  return `On the needle: ${counts.join(" · ")}${after}`;
}

interface SaidIn {
  readonly sizes: string[];
  isFault: boolean;
}

function messagesBySize(sizes: readonly StepInSize[]): Map<string, SaidIn> {
  const said = new Map<string, SaidIn>();
  for (const { size, status, messages } of sizes)
    for (const message of messages) {
      const known = said.get(message) ?? { sizes: [], isFault: false };
      said.set(message, known);
      known.sizes.push(size);
      known.isFault ||= status === "fault";
    }
  return said;
}
