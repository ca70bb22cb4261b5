"use client";

import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { inUnitOf, isBesideTexts, unitOfEdits, withText, type EditField } from "@/engine/editing";
import { own } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { forgetLateSave, keepDraft } from "../actions";
import type { Typed } from "../schema";
import { standingText } from "./edit-table";

interface LateEditsProps {
  readonly patternId: string;
  readonly baseNumber: number;
  readonly fields: readonly EditField[];
  readonly unit: LengthUnit;
  readonly hers: Typed;
  readonly theirs: Typed;
  readonly theirName: string | null;
  readonly version: number;
}

/** Both texts side by side, field by field; whatever she does not take is left as it stands. */
export function LateEdits({ patternId, baseNumber, fields, unit, theirName, version, ...sides }: LateEditsProps) {
  const router = useRouter();
  const inUnit = unitOfEdits(sides.theirs, unit);
  const theirs = sides.theirs;
  const hers = inUnitOf(sides.hers, { fields, unit: inUnit, from: unit });
  const paths = [...new Set([...Object.keys(hers), ...Object.keys(theirs)])].filter(
    (path) => !isBesideTexts(path) && own(hers, path) !== own(theirs, path),
  );
  const [mine, setMine] = useState<ReadonlySet<string>>(new Set(paths.filter((path) => own(hers, path) !== undefined)));
  const [says, setSays] = useState<string | null>(null);
  const [isBusy, start] = useTransition();

  const settle = () =>
    start(async () => {
      const typed = [...mine].reduce((edits, path) => withText(edits, path, own(hers, path), inUnit), theirs);
      const saved = await keepDraft(patternId, { typed, version, baseNumber }).catch(() => null);
      if (saved === null) return setSays("This did not reach Sizewright. Check the connection and try again.");
      if (saved.status === "failed") return setSays(saved.says);
      if (saved.status === "saved") await forgetLateSave(patternId);
      router.refresh();
    });
  const choose = (path: string, isMine: boolean) =>
    setMine(new Set(isMine ? [...mine, path] : [...mine].filter((other) => other !== path)));

  return (
    <>
      <Notice tone="problem" title={`${theirName ?? "Somebody"} saved while you were editing`}>
        <p>
          Both texts are kept. Choose for each number; what you choose becomes the draft on top of revision {baseNumber}
          .
        </p>
        {says ? <p className="font-semibold">{says}</p> : null}
      </Notice>
      {paths.length === 0 ? <p className="mb-6">Both say the same: there is nothing to choose.</p> : null}
      <div className="mb-4 flex flex-wrap gap-3">
        <Button look="quiet" onClick={() => setMine(new Set(paths))}>
          Take all of mine
        </Button>
        <Button look="quiet" onClick={() => setMine(new Set())}>
          Take all of theirs
        </Button>
      </div>
      <TableFrame label="Both texts">
        <table className={TABLE}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">Number</th>
              <th scope="col">Mine</th>
              <th scope="col">Theirs</th>
            </tr>
          </thead>
          <tbody>
            {paths.map((path) => {
              const field = fields.find((each) => each.path === path);
              const standing = field ? standingText(field, inUnit) : "";
              return (
                <tr key={path} className={TABLE_ROW}>
                  <th scope="row" className="font-normal wrap-anywhere">
                    {field ? `${field.label}, ${field.size?.label ?? "all sizes"}` : path}
                  </th>
                  {[true, false].map((isMine) => (
                    <td key={String(isMine)}>
                      <label className="flex min-h-9 items-center gap-2">
                        <input
                          type="radio"
                          name={path}
                          checked={mine.has(path) === isMine}
                          onChange={() => choose(path, isMine)}
                        />
                        {own(isMine ? hers : theirs, path) ?? `${standing}, as in revision ${baseNumber}`}
                      </label>
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </TableFrame>
      <div className="mt-5">
        <Button disabled={isBusy} onClick={settle}>
          {isBusy ? "Saving…" : "Go on with these"}
        </Button>
      </div>
    </>
  );
}
