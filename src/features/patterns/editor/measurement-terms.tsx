"use client";

import { useDeferredValue, useMemo } from "react";
import { explainDraft, type ExplainedDraft } from "@/engine/editing";
import { formatPath } from "@/engine/pattern";
import { useEditing } from "./editing";
import { AddButton } from "./item-buttons";
import { moveItem, removeItem, replaceItem } from "./list-items";
import type { MeasurementEdit } from "./measurement-edit";
import { shownLengths } from "./measurement-shown";
import { MeasurementTotal } from "./measurement-total";
import { SaidBelow } from "./said-below";
import { NEW_LINE, NEW_SLANT, type DraftTerm } from "./term-choices";
import { TermRow } from "./term-row";

/** How a measurement is calculated: its lines, each with its numbers in the chosen size, and the total. */
export function MeasurementTerms({ measurement, i, onMeasurement }: MeasurementEdit) {
  const explained = useExplained(measurement);
  const { unit } = useEditing("unit");
  const { terms } = measurement;
  const shown = explained ? shownLengths(explained, unit) : [];
  const setTerms = (next: readonly DraftTerm[], field: string | null) =>
    onMeasurement({ ...measurement, terms: next }, field);
  const add = (term: DraftTerm) => setTerms([...terms, term], null);
  const path = formatPath(["measurements", i, "terms"]);
  return (
    <section aria-labelledby={`${path}-head`}>
      <h4 id={`${path}-head`} className="font-serif text-lg font-semibold">
        Calculation
      </h4>
      {terms.length === 0 ? (
        <p className="text-soft">
          Add everything along the measurement: stitches across, rows along, an edging, a seam.
        </p>
      ) : null}
      <ol>
        {terms.map((term, index) => (
          <TermRow
            key={index}
            at={[...["measurements", i, "terms"], index]}
            term={term}
            number={index + 1}
            line={explained?.lines[index]}
            shown={shown[index]}
            onTerm={(next, field) => setTerms(replaceItem(terms, index, next), field && `terms[${index}].${field}`)}
            onUp={index === 0 ? undefined : () => setTerms(moveItem(terms, index, -1), null)}
            onDown={index === terms.length - 1 ? undefined : () => setTerms(moveItem(terms, index, 1), null)}
            onRemove={() => setTerms(removeItem(terms, index), null)}
          />
        ))}
      </ol>
      <SaidBelow id={`field-${path}`} path={path} />
      <div className="mt-3 flex flex-wrap gap-3">
        <AddButton label="A line" onAdd={() => add(NEW_LINE)} />
        <AddButton label="A diagonal" onAdd={() => add(NEW_SLANT)} />
      </div>
      {explained && terms.length > 0 ? <MeasurementTotal explained={explained} /> : null}
    </section>
  );
}

/** Typing has priority over calculating. */
function useExplained(measurement: MeasurementEdit["measurement"]): ExplainedDraft | null {
  const { readable, size, unit } = useEditing("readable", "size", "unit");
  const typed = useDeferredValue(measurement);
  return useMemo(
    () => (readable === null ? null : explainDraft({ readable, measurement: typed, size, unit })),
    [readable, typed, size, unit],
  );
}
