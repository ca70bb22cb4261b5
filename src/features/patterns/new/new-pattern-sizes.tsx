"use client";

import type { FieldMetadata } from "@conform-to/react";
import type { ReactNode } from "react";
import { BODY_TABLES } from "@/engine/trade-tables";
import type { LengthUnit } from "@/engine/units";
import { OWN_SIZES } from "./new-pattern-schema";
import { NewPatternOwn, type OwnFields } from "./new-pattern-own";
import { NewPatternTable, type ChosenBefore } from "./new-pattern-table";
import { provenanceWords } from "../provenance-copy";

export type { OwnFields } from "./new-pattern-own";
export type { TableFields } from "./new-pattern-table";

interface NewPatternSizesProps {
  readonly unit: LengthUnit;
  /** What was chosen before, where the form comes back. */
  readonly sizesFrom: string | undefined;
  readonly tables: Readonly<Record<string, ChosenBefore | undefined>> | undefined;
  readonly own: { readonly [Key in keyof OwnFields]: FieldMetadata<OwnFields[Key]> };
}

/** Where the sizes come from: one of the tables or the designer's own list, each with its choices below it. */
export function NewPatternSizes({ unit, sizesFrom, tables, own }: NewPatternSizesProps) {
  const chosen = sizesFrom ?? BODY_TABLES[0]?.id;
  return (
    <fieldset>
      <legend className="sr-only">Where the sizes come from</legend>
      <ul className="grid gap-3">
        {BODY_TABLES.map((table) => (
          <SizeSource
            key={table.id}
            value={table.id}
            label={table.label}
            says={provenanceWords(table)}
            isChosen={chosen === table.id}
          >
            <NewPatternTable table={table} unit={unit} before={tables?.[table.id]} />
          </SizeSource>
        ))}
        <SizeSource
          value={OWN_SIZES}
          label="My own sizes"
          says="A list of sizes, each with one body measurement."
          isChosen={chosen === OWN_SIZES}
        >
          <NewPatternOwn unit={unit} fields={own} />
        </SizeSource>
      </ul>
    </fieldset>
  );
}

interface SizeSourceProps {
  readonly value: string;
  readonly label: string;
  readonly says: string;
  readonly isChosen: boolean;
  readonly children: ReactNode;
}

/** One source to choose. Its choices open by the style sheet, so also without scripts. */
function SizeSource({ value, label, says, isChosen, children }: SizeSourceProps) {
  return (
    <li className="group/source min-w-0 rounded-sheet border border-line bg-sheet shadow-sheet has-[[name=sizesFrom]:checked]:border-ink">
      <label className="flex min-h-11 cursor-pointer items-start gap-3 px-4 py-3 sm:px-6">
        <input
          type="radio"
          name="sizesFrom"
          value={value}
          defaultChecked={isChosen}
          className="mt-1 size-5 shrink-0 accent-thread"
        />
        <span className="min-w-0">
          <span className="block font-semibold">{label}</span>
          <span className="block text-sm text-soft">{says}</span>
        </span>
      </label>
      <div className="hidden border-t border-line px-4 pb-5 pt-4 group-has-[[name=sizesFrom]:checked]/source:block sm:px-6">
        {children}
      </div>
    </li>
  );
}
