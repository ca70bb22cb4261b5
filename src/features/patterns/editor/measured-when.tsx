"use client";

import type { DraftPattern } from "@/engine/editing";
import { formatPath } from "@/engine/pattern";
import { useEditing } from "./editing";
import { ChoiceField, NumberField } from "./fields";
import { replaceItem } from "./list-items";

type DraftLength = NonNullable<DraftPattern["lengths"]>[number];

const MEASURED = [
  { value: "working", label: "while working" },
  { value: "blocked", label: "after blocking" },
] as const;

/** Whether a length is measured while working or after blocking; while working, also what blocking then makes of it. */
export function MeasuredWhen({ length, i }: { readonly length: DraftLength; readonly i: number }) {
  const { pattern, change } = useEditing("pattern", "change");
  const set = (next: DraftLength, field: string | null) =>
    change(
      (now) => ({ ...now, lengths: replaceItem(now.lengths ?? [], i, next) }),
      field && formatPath(["lengths", i, field]),
    );
  const choose = (value: string) => {
    const { measured: _measured, growth, fabric, ...rest } = length;
    const isWorking = value === "working";
    const kept = { ...(growth === undefined ? {} : { growth }), ...(fabric === undefined ? {} : { fabric }) };
    set(isWorking ? { ...rest, ...kept, measured: "working" } : rest, null);
  };
  return (
    <div className="mt-3 flex flex-wrap items-start gap-x-4 gap-y-3">
      <div className="w-52 max-w-full">
        <ChoiceField
          at={["lengths", i, "measured"]}
          label="Measured"
          value={length.measured ?? "blocked"}
          choices={MEASURED}
          onChoice={choose}
        />
      </div>
      {length.measured === "working" ? (
        <>
          {pattern.fabrics.length > 1 ? (
            <div className="w-52 max-w-full">
              <ChoiceField
                at={["lengths", i, "fabric"]}
                label="In the fabric"
                value={length.fabric ?? pattern.fabrics[0]?.id ?? ""}
                choices={pattern.fabrics.map(({ id, label }) => ({ value: id, label }))}
                onChoice={(fabric) => set({ ...length, fabric }, null)}
              />
            </div>
          ) : null}
          <NumberField
            at={["lengths", i, "growth"]}
            label="Blocking makes it × as long"
            placeholder="1"
            value={length.growth}
            onText={(text) => {
              const { growth: _growth, ...rest } = length;
              set(text.trim() === "" ? rest : { ...rest, growth: text }, "growth");
            }}
          />
        </>
      ) : null}
    </div>
  );
}
