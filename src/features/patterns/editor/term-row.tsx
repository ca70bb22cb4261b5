"use client";

import type { ExplainedLine } from "@/engine/editing";
import type { PathPart } from "@/engine/pattern";
import { formatLength } from "@/ui/format-length";
import { termWords } from "../term-copy";
import { useEditing } from "./editing";
import { ItemButtons } from "./item-buttons";
import type { ShownLength } from "./measurement-shown";
import { TakenTwice } from "./taken-twice";
import { FlatFields } from "./term-fields";
import { SlantFields } from "./term-slant";
import type { DraftTerm } from "./term-choices";

interface TermRowProps {
  readonly at: readonly PathPart[];
  readonly term: DraftTerm;
  /** From 1. */
  readonly number: number;
  readonly line: ExplainedLine | undefined;
  readonly shown: ShownLength | undefined;
  readonly onTerm: (term: DraftTerm, field: string | null) => void;
  readonly onUp?: () => void;
  readonly onDown?: () => void;
  readonly onRemove: () => void;
}

/** One line of a measurement, its calculation, and the total so far. */
export function TermRow({ at, term, number, line, shown, onTerm, ...move }: TermRowProps) {
  const name = `Line ${number}`;
  return (
    <li className="border-b border-line py-3">
      <div className="flex flex-wrap items-start justify-between gap-x-2 gap-y-2 sm:flex-nowrap">
        {"diagonal" in term ? (
          <SlantFields at={at} name={name} term={term} onTerm={onTerm} />
        ) : (
          <FlatFields at={at} name={name} term={term} onTerm={onTerm} />
        )}
        <span className="order-1 ml-auto sm:order-none">
          <ItemButtons name={name.toLowerCase()} {...move} />
        </span>
      </div>
      <LineInNumbers line={line} shown={shown} />
      <TakenTwice term={term} />
    </li>
  );
}

function LineInNumbers({ line, shown }: Pick<TermRowProps, "line" | "shown">) {
  const { unit } = useEditing("unit");
  if (line?.status !== "computed" || shown === undefined) {
    return <p className="mt-1 text-sm text-soft">{line?.status === "missing" ? missing(line.counts) : NOT_YET}</p>;
  }
  return (
    <p className="numbers mt-1.5 flex flex-wrap items-baseline justify-between gap-x-8 gap-y-1">
      <span className="min-w-0 wrap-anywhere">
        {termWords(line.term, unit)} = <b className="whitespace-nowrap">{formatLength(shown.cm, unit)}</b>
      </span>
      <span className="ml-auto whitespace-nowrap text-sm text-soft">so far {formatLength(shown.soFarCm, unit)}</span>
    </p>
  );
}

const NOT_YET = "Not calculated yet.";

function missing(labels: readonly string[]): string {
  const names = [...new Set(labels)].map((label) => `“${label}”`).join(" and ");
  return `Not calculated yet: ${names} ${labels.length === 1 ? "has" : "have"} no number in this size. Add it under “Grading”.`;
}
