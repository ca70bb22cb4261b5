"use client";

import { useState } from "react";
import { Section } from "@/ui/section";
import { AddNamed } from "./add-named";
import { cmItems, withCmItems, withNewCm, withPastedCm, type CmItem, type CmList } from "./cm-list";
import { CmRow } from "./cm-row";
import { useEditing } from "./editing";
import { GridArea } from "./grid-area";
import { removeItem } from "./list-items";
import { TakenOutNote, type TakenOut } from "./taken-out";
import { usesOfAllowance, usesOfLength } from "./uses";

const WORDS = {
  lengths: {
    title: "Work until it measures",
    intro:
      "What people work to a length instead of counting, such as 5 cm of rib. It is the same at any gauge; measured while working, it still changes with blocking. Measurements can include it.",
    what: "length",
    placeholder: "such as Hem rib",
    none: "Nothing is worked to a length yet.",
    usesOf: usesOfLength,
  },
  allowances: {
    title: "Edgings and seams",
    intro:
      "What an edging, seam or join adds to a measurement or takes from it: for example, a crocheted edge adds 1 cm, a seam takes 1 cm.",
    what: "edging or seam",
    placeholder: "such as Side seam",
    none: "No edgings or seams yet.",
    usesOf: usesOfAllowance,
  },
} as const;

/** Lengths that are worked until they measure so much, and what edgings, seams and joins add or take. */
export function LengthsPart() {
  return (
    <>
      <CmSection list="lengths" />
      <CmSection list="allowances" />
    </>
  );
}

function CmSection({ list }: { readonly list: CmList }) {
  const { pattern, change } = useEditing("pattern", "change");
  const [takenOut, setTakenOut] = useState<TakenOut | null>(null);
  const { title, intro, what, placeholder, none, usesOf } = WORDS[list];
  const items = cmItems(pattern, list);
  const remove = ({ id, label }: CmItem, index: number) => {
    change((now) => withCmItems(now, list, removeItem(cmItems(now, list), index)), null);
    setTakenOut({ id, name: label, uses: usesOf(pattern, id) });
  };
  return (
    <Section title={title} intro={intro}>
      {items.length === 0 ? <p className="mb-4 text-soft">{none}</p> : null}
      <GridArea
        onBlock={(block, row, column) => change((now) => withPastedCm(now, list, { block, row, column }), null)}
      >
        <ol className="mb-4 grid grid-cols-1 gap-3">
          {items.map((item, i) => (
            <CmRow
              key={item.id}
              {...{ list, item, i }}
              isLast={i === items.length - 1}
              uses={usesOf(pattern, item.id)}
              onRemove={() => remove(item, i)}
            />
          ))}
        </ol>
      </GridArea>
      <TakenOutNote last={takenOut} items={items} />
      <AddNamed {...{ what, placeholder }} onAdd={(label) => change((now) => withNewCm(now, list, label), null)} />
    </Section>
  );
}
