"use client";

import type { Typed } from "@/engine/editing";
import type { PathPart } from "@/engine/pattern";
import type { CmList } from "./cm-list";
import { NumberField } from "./fields";
import { joinSign, retyped, splitSign } from "./signed";

interface CmFieldProps {
  readonly list: CmList;
  readonly at: readonly PathPart[];
  readonly question: string;
  readonly label: string;
  readonly value: Typed | undefined;
  /** Small for a table cell, with the word above the number. */
  readonly behind?: string;
  readonly onTyped: (typed: Typed, isTyping: boolean) => void;
}

/** A length; whether an edging or seam adds or takes is a word beside its number. */
export function CmField({ list, behind, value, onTyped, ...rest }: CmFieldProps) {
  const shared = { ...rest, behind, kind: "length", labelled: "aloud", className: behind ? "w-20" : "w-full" } as const;
  if (list === "lengths") return <NumberField {...shared} value={value} onText={(text) => onTyped(text, true)} />;
  const { takes, amount } = splitSign(value ?? "");
  return (
    <div className={behind ? "flex items-start gap-1.5" : "grid gap-1"}>
      <select
        aria-label={`${rest.label}: adds or takes`}
        value={takes ? "takes" : "adds"}
        onChange={({ target }) => onTyped(joinSign({ takes: target.value === "takes", amount }), false)}
        className={`control min-h-11 px-2 ${behind ? "w-24" : ""}`}
      >
        <option value="adds">adds</option>
        <option value="takes">takes</option>
      </select>
      <NumberField {...shared} value={amount} onText={(text) => onTyped(retyped(text, takes), true)} />
    </div>
  );
}
