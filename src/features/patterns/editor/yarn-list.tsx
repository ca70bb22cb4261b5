"use client";

import { useState } from "react";
import type { DraftPattern } from "@/engine/editing";
import { formatPath } from "@/engine/pattern";
import { uniqueSlug } from "@/engine/tables";
import { Section } from "@/ui/section";
import { AddNamed } from "./add-named";
import { useEditing } from "./editing";
import { NumberField, TextField } from "./fields";
import { ItemButtons } from "./item-buttons";
import { moveItem, removeItem, replaceItem } from "./list-items";
import { TakenOutNote, type TakenOut } from "./taken-out";
import { usesOfYarn, usesWords } from "./uses";

type DraftYarn = DraftPattern["yarns"][number];

/** The yarns, with the data from their labels. */
export function YarnList() {
  const { pattern, change } = useEditing("pattern", "change");
  const [takenOut, setTakenOut] = useState<TakenOut | null>(null);
  const { yarns } = pattern;
  const remove = ({ id, label }: DraftYarn, index: number) => {
    change((now) => ({ ...now, yarns: removeItem(now.yarns, index) }), null);
    setTakenOut({ id, name: label, uses: usesOfYarn(pattern, id) });
  };
  return (
    <Section
      title="Yarns"
      intro="From the yarn label. From this and what testers weigh, Sizewright calculates how much yarn each size needs."
    >
      {yarns.length === 0 ? <p className="mb-4 text-soft">No yarns yet. Add each yarn or colour.</p> : null}
      <ol className="mb-4 grid grid-cols-1 gap-3">
        {yarns.map((yarn, index) => (
          <YarnRow key={yarn.id} yarn={yarn} i={index} onRemove={() => remove(yarn, index)} />
        ))}
      </ol>
      <TakenOutNote last={takenOut} items={yarns} />
      <AddNamed
        what="yarn"
        placeholder="such as Main yarn"
        onAdd={(label) => change((now) => withNewYarn(now, label), null)}
      />
    </Section>
  );
}

function withNewYarn(pattern: DraftPattern, label: string): DraftPattern {
  const id = uniqueSlug(label, new Set(pattern.yarns.map((yarn) => yarn.id)));
  return { ...pattern, yarns: [...pattern.yarns, { id, label, metresPerBall: "", gramsPerBall: "" }] };
}

interface YarnRowProps {
  readonly yarn: DraftYarn;
  readonly i: number;
  readonly onRemove: () => void;
}

function YarnRow({ yarn, i, onRemove }: YarnRowProps) {
  const { pattern, change } = useEditing("pattern", "change");
  const set = (next: DraftYarn, field: string) =>
    change((now) => ({ ...now, yarns: replaceItem(now.yarns, i, next) }), formatPath(["yarns", i, field]));
  const move = (by: -1 | 1) => change((now) => ({ ...now, yarns: moveItem(now.yarns, i, by) }), null);
  const uses = usesOfYarn(pattern, yarn.id);
  const setColour = (colour: string) => {
    const { colour: _before, ...rest } = yarn;
    set(colour === "" ? rest : { ...rest, colour }, "colour");
  };
  return (
    <li className="rounded-sheet border border-line bg-sheet px-4 py-3 shadow-sheet">
      <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
        <div className="min-w-48 flex-1">
          <TextField
            at={["yarns", i, "label"]}
            label="Yarn"
            value={yarn.label}
            onText={(label) => set({ ...yarn, label }, "label")}
          />
        </div>
        <div className="w-44 max-w-full">
          <TextField
            at={["yarns", i, "colour"]}
            label="Colour (optional)"
            value={yarn.colour ?? ""}
            onText={setColour}
          />
        </div>
        <NumberField
          at={["yarns", i, "metresPerBall"]}
          label="Length per ball"
          behind="m"
          value={yarn.metresPerBall}
          onText={(metresPerBall) => set({ ...yarn, metresPerBall }, "metresPerBall")}
        />
        <NumberField
          at={["yarns", i, "gramsPerBall"]}
          label="Weight per ball"
          behind="g"
          value={yarn.gramsPerBall}
          onText={(gramsPerBall) => set({ ...yarn, gramsPerBall }, "gramsPerBall")}
        />
        <span className="ml-auto self-end">
          <ItemButtons
            name={yarn.label || `yarn ${i + 1}`}
            onUp={i === 0 ? undefined : () => move(-1)}
            onDown={i === pattern.yarns.length - 1 ? undefined : () => move(1)}
            onRemove={onRemove}
          />
        </span>
      </div>
      <p className="mt-2 text-sm text-soft">
        {uses.length === 0 ? "Not used in any piece yet." : `Used in ${usesWords(uses)}.`}
      </p>
    </li>
  );
}
