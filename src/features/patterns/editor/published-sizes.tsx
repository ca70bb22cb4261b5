"use client";

import { useId, useState } from "react";
import { BODY_TABLES, sizesFromTable, type BodyTable, type TableChoice } from "@/engine/trade-tables";
import { Button } from "@/ui/button";
import { Select } from "@/ui/field";
import { NewPatternTable } from "../new/new-pattern-table";
import { provenanceWords } from "../provenance-copy";
import { useEditing } from "./editing";
import { withPublishedSizes } from "./with-published-sizes";

/** Sizes of a body table, replacing the pattern's own. */
export function PublishedSizes() {
  const [chosen, choose] = useState(BODY_TABLES[0]?.id ?? "");
  const id = useId();
  const table = BODY_TABLES.find((each) => each.id === chosen);
  return (
    <details className="mb-5 rounded-sheet border border-line bg-sheet px-5 py-3">
      <summary className="min-h-8 font-semibold">Start from a table of body measurements</summary>
      <p className="mt-2 max-w-3xl text-soft">Check the numbers against your own and change what you know better.</p>
      <label htmlFor={id} className="mt-4 mb-1 block font-semibold">
        Table
      </label>
      <Select id={id} className="max-w-xl" value={chosen} onChange={({ target }) => choose(target.value)}>
        {BODY_TABLES.map(({ id: value, label }) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </Select>
      {table === undefined ? null : <TableToFill key={table.id} table={table} />}
    </details>
  );
}

function TableToFill({ table }: { readonly table: BodyTable }) {
  const { pattern, unit, change } = useEditing("pattern", "unit", "change");
  const [choice, setChoice] = useState<TableChoice>({});
  const [says, setSays] = useState<string | null>(null);
  const fill = () => {
    const ready = sizesFromTable(table, choice);
    change((now) => withPublishedSizes(now, ready), null);
    setSays(`${ready.sizes.length} sizes filled in. Use Undo to restore yours.`);
  };
  const warning =
    pattern.sizes.length === 0
      ? ""
      : "They replace the sizes below. A size with the same label keeps its numbers everywhere; missing numbers of new sizes are marked.";
  return (
    <>
      <p className="mt-1 mb-4 text-sm text-soft">{provenanceWords(table)}</p>
      <NewPatternTable table={table} unit={unit} before={undefined} onChoice={setChoice} />
      <div className="mt-4 mb-2 flex flex-wrap items-center gap-x-4 gap-y-2">
        <Button look="quiet" onClick={fill}>
          Use these sizes
        </Button>
        <p role="status" className="max-w-xl text-sm text-soft">
          {says ?? warning}
        </p>
      </div>
    </>
  );
}
