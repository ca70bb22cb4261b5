"use client";

import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import {
  applyChanges,
  createDraft,
  draftInUnit,
  patternChanges,
  type PatternChange,
  type PatternDraft,
} from "@/engine/editing";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { discardConflictingDraft, saveDraftEdits } from "../actions";
import { changeSide } from "../pattern-copy";

interface ConflictingEditsProps {
  readonly patternId: string;
  readonly base: PatternDocument;
  readonly baseNumber: number;
  readonly unit: LengthUnit;
  /** Null where a side changes nothing. */
  readonly own: PatternDraft | null;
  readonly theirs: PatternDraft | null;
  readonly theirName: string | null;
  readonly version: number;
}

/** Both versions side by side, change by change; a change not chosen stays as the other person has it. */
export function ConflictingEdits({
  patternId,
  base,
  baseNumber,
  unit,
  theirName,
  version,
  ...sides
}: ConflictingEditsProps) {
  const router = useRouter();
  const theirs = sides.theirs ?? createDraft(base, unit);
  const own = draftInUnit(sides.own ?? createDraft(base, unit), theirs.unit);
  const changes = patternChanges(theirs.pattern, own.pattern);
  const edited = new Set(patternChanges(base, own.pattern).map(({ path }) => path));
  const paths = changes.map(({ path }) => path);
  const [mine, setMine] = useState<ReadonlySet<string>>(new Set(paths.filter((path) => edited.has(path))));
  const [says, setSays] = useState<string | null>(null);
  const [isBusy, start] = useTransition();

  const settle = () =>
    start(async () => {
      const chosen = paths.filter((path) => mine.has(path));
      const pattern = applyChanges(theirs.pattern, own.pattern, chosen);
      const content = { ...theirs, pattern, meant: { ...theirs.meant, ...own.meant } };
      const saved = await saveDraftEdits(patternId, { content, version, baseNumber }).catch(() => null);
      if (saved === null) return setSays("This did not reach Sizewright. Check your connection and try again.");
      if (saved.status === "failed") return setSays(saved.says);
      if (saved.status === "saved") await discardConflictingDraft(patternId);
      router.refresh();
    });
  const choose = (path: string, isMine: boolean) =>
    setMine(new Set(isMine ? [...mine, path] : [...mine].filter((other) => other !== path)));

  return (
    <>
      <Notice tone="problem" title={`${theirName ?? "Someone"} saved while you were editing`}>
        <p>
          Both versions are saved. Choose for each change; your choice becomes the draft based on revision {baseNumber}.
        </p>
        {says ? <p className="font-semibold">{says}</p> : null}
      </Notice>
      {paths.length === 0 ? <p className="mb-6">Both versions are the same. There is nothing to choose.</p> : null}
      <div className="mb-4 flex flex-wrap gap-3">
        <Button look="quiet" onClick={() => setMine(new Set(paths))}>
          Use all of mine
        </Button>
        <Button look="quiet" onClick={() => setMine(new Set())}>
          Use all of theirs
        </Button>
      </div>
      <TableFrame label="Both versions">
        <table className={TABLE}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">What</th>
              <th scope="col">Mine</th>
              <th scope="col">Theirs</th>
            </tr>
          </thead>
          <tbody>
            {changes.map((change) => (
              <LateChange
                key={change.path}
                change={change}
                unit={theirs.unit}
                isMine={mine.has(change.path)}
                onChoose={(isMine) => choose(change.path, isMine)}
              />
            ))}
          </tbody>
        </table>
      </TableFrame>
      <div className="mt-5">
        <Button disabled={isBusy} onClick={settle}>
          {isBusy ? "Saving…" : "Continue with these"}
        </Button>
      </div>
    </>
  );
}

interface LateChangeProps {
  readonly change: PatternChange;
  readonly unit: LengthUnit;
  readonly isMine: boolean;
  readonly onChoose: (isMine: boolean) => void;
}

function LateChange({ change, unit, isMine, onChoose }: LateChangeProps) {
  const sides = [
    { own: true, value: change.becomes },
    { own: false, value: change.was },
  ];
  return (
    <tr className={TABLE_ROW}>
      <th scope="row" className="font-normal wrap-anywhere">
        {change.what}
        {change.size === undefined ? "" : `, ${change.size}`}
      </th>
      {sides.map(({ own, value }) => (
        <td key={String(own)}>
          <label className="flex min-h-9 items-center gap-2 wrap-anywhere">
            <input type="radio" name={change.path} checked={isMine === own} onChange={() => onChoose(own)} />
            {change.was === null && change.becomes === null ? "my version" : changeSide(change, value, unit)}
          </label>
        </td>
      ))}
    </tr>
  );
}
