"use client";

import { useEditing } from "./editing";
import { ChoiceField, NumberField, TextField, TickField } from "./fields";
import type { DraftPiece } from "./draft-garment";

interface PieceBasicsProps {
  readonly piece: DraftPiece;
  readonly i: number;
  /** @param field where it is typed, in the piece; null for a separate edit. */
  readonly onPiece: (next: DraftPiece, field: string | null) => void;
}

const STARTS = [
  { value: "hem", label: "the hem up" },
  { value: "neck", label: "the neck down" },
  { value: "side", label: "side to side" },
  { value: "centre", label: "the centre out" },
] as const;

/** A piece's name, how often and in which fabric it is made, and where work starts. */
export function PieceBasics({ piece, i, onPiece }: PieceBasicsProps) {
  const { pattern } = useEditing("pattern");
  const path = ["garment", "pieces", i] as const;
  const setStart = (value: string) => {
    const { start: _before, ...rest } = piece;
    const start = STARTS.find((each) => each.value === value)?.value;
    onPiece(start === undefined ? rest : { ...rest, start }, null);
  };
  return (
    <div className="grid gap-3">
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <div className="min-w-48 flex-1">
          <TextField
            at={[...path, "label"]}
            label="Name"
            value={piece.label}
            onText={(label) => onPiece({ ...piece, label }, "label")}
          />
        </div>
        <NumberField
          at={[...path, "made"]}
          label="Made"
          className="w-16"
          behind="times"
          value={piece.made}
          onText={(made) => onPiece({ ...piece, made }, "made")}
        />
        <div className="w-40">
          <ChoiceField
            at={[...path, "start"]}
            label="Worked from"
            value={piece.start ?? ""}
            nothing="not specified"
            choices={STARTS}
            onChoice={setStart}
          />
        </div>
      </div>
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <div className="w-64 max-w-full">
          <ChoiceField
            at={[...path, "fabric"]}
            label="Fabric"
            value={piece.fabric}
            choices={pattern.fabrics.map(({ id, label }) => ({ value: id, label: label || id }))}
            onChoice={(fabric) => onPiece({ ...piece, fabric }, null)}
          />
        </div>
        <div className="w-64 max-w-full">
          <ChoiceField
            at={[...path, "yarn"]}
            label="Yarn"
            value={piece.yarn}
            choices={pattern.yarns.map(({ id, label }) => ({ value: id, label: label || id }))}
            onChoice={(yarn) => onPiece({ ...piece, yarn }, null)}
          />
          {pattern.yarns.length === 0 ? (
            <p className="mt-1 text-sm text-soft">Add a yarn under “Text and yarn” first.</p>
          ) : null}
        </div>
      </div>
      <div>
        <TickField
          label="show with its mirror image"
          checked={piece.mirrored ?? false}
          onTick={(ticked) => {
            const { mirrored: _before, ...rest } = piece;
            onPiece(ticked ? { ...rest, mirrored: true } : rest, null);
          }}
        />
        <p className="text-sm text-soft">
          For one of two halves, such as the front of a cardigan: the other half is shown beside it. “Made” counts both.
        </p>
      </div>
    </div>
  );
}
