"use client";

import { useCallback, useDeferredValue, useMemo } from "react";
import { answerMeant, applyEdits, editFields, unitOfEdits, withText, type EditField } from "@/engine/editing";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import type { Typed } from "../schema";
import { ChangeList } from "./change-list";
import { EditTable, standingText, type FieldRemarks } from "./edit-table";
import { FaultList } from "./fault-list";
import { FinishedTable } from "./finished-table";
import { ruleWarnings } from "./pattern-words";
import { LateEdits } from "./late-edits";
import { SaveBar } from "./save-bar";
import { useDraft } from "./use-draft";

interface PatternEditorProps {
  readonly patternId: string;
  readonly pattern: PatternDocument;
  readonly baseNumber: number;
  readonly unit: LengthUnit;
  readonly draft: { readonly typed: Typed; readonly version: number; readonly by: string | null };
  /** Her own edits that came too late. */
  readonly lateTyped: Typed | null;
}

const TABLES = [
  { kind: "count", title: "Counts", corner: "Stitches or rows" },
  { kind: "allowance", title: "Allowances", corner: "Adds (+) or takes (−)" },
  { kind: "length", title: "Lengths", corner: "Work until it measures" },
  { kind: "ease", title: "Ease of the targets", corner: "Over the body (+) or under it (−)" },
  { kind: "target", title: "Target lengths", corner: "Should measure" },
] as const;

/** The pattern's numbers as inputs, kept as a draft while she types, with what each measurement then comes to. */
export function PatternEditor({ patternId, pattern, baseNumber, unit: hers, draft, lateTyped }: PatternEditorProps) {
  const { typed, status, edit, send } = useDraft({ patternId, ...draft, baseNumber });
  const unit = unitOfEdits(typed, hers);
  const fields = useMemo(() => editFields(pattern), [pattern]);
  const shown = useDeferredValue(typed);
  const applied = useMemo(() => applyEdits(pattern, shown, hers), [pattern, shown, hers]);
  const remarks: FieldRemarks = useMemo(
    () => ({
      faults: new Map(applied.faults.map(({ path, says }) => [path, says])),
      askedBack: new Map(applied.askedBack.map((remark) => [remark.path, remark])),
    }),
    [applied],
  );
  const onType = useCallback(
    (field: EditField, text: string) =>
      edit(withText(typed, field.path, text === standingText(field, unit) ? undefined : text, unit)),
    [edit, typed, unit],
  );
  const onMeant = useCallback((path: string, meant: boolean) => edit(answerMeant(typed, path, meant)), [edit, typed]);
  if (lateTyped !== null) {
    return (
      <LateEdits
        {...{ patternId, fields, unit, baseNumber }}
        hers={lateTyped}
        theirs={draft.typed}
        theirName={draft.by}
        version={draft.version}
      />
    );
  }
  const strays = applied.faults.filter(({ path }) => !fields.some((field) => field.path === path));
  const warnings = ruleWarnings(applied.document);
  return (
    <>
      <p className="mb-8 max-w-3xl text-soft">
        Lengths are read in {unit === "in" ? "inches" : "centimetres"} unless you write the unit behind them: 38.5, 38,5
        and 12 3/8 in are all understood. What you type is kept as you go; nothing changes for others until you save a
        revision.
      </p>
      {TABLES.map(({ kind, title, corner }) => {
        const ofKind = fields.filter((field) => field.kind === kind);
        return ofKind.length === 0 ? null : (
          <Section key={kind} title={title}>
            <EditTable
              label={title}
              corner={kind === "count" ? corner : `${corner}, ${unit}`}
              {...{ typed, unit, remarks, onType, onMeant }}
              fields={ofKind}
              sizes={pattern.sizes}
            />
          </Section>
        );
      })}
      {strays.map(({ path, says }) => (
        <Notice key={path} tone="problem" title={path}>
          <p>{says}</p>
          <button
            type="button"
            className="text-link min-h-6"
            onClick={() => edit(withText(typed, path, undefined, unit))}
          >
            Take it back
          </button>
        </Notice>
      ))}
      <Section title="What each measurement becomes">
        <FinishedTable pattern={applied.document} unit={hers} />
      </Section>
      {warnings.length > 0 ? (
        <Notice title="Some numbers break the pattern’s own rules; you can save them so">
          <FaultList faults={warnings} />
        </Notice>
      ) : null}
      {applied.changes.length > 0 ? (
        <Section title="Your changes">
          <ChangeList changes={applied.changes} unit={hers} />
        </Section>
      ) : null}
      <SaveBar {...{ patternId, typed, baseNumber, status, send }} applied={applied} />
    </>
  );
}
