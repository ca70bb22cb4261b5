"use client";

import type { ReactNode } from "react";
import { formatPath } from "@/engine/pattern";
import { Sheet } from "@/ui/sheet";
import { useEditing } from "./editing";
import { type DraftFabric, GaugeFields } from "./gauge-fields";
import { FactorFields } from "./factor-fields";
import { ChoiceField, NumberField, TextField } from "./fields";
import { ItemButtons } from "./item-buttons";
import { moveItem, replaceItem } from "./list-items";
import { usesOfFabric, usesWords } from "./uses";

interface FabricCardProps {
  readonly fabric: DraftFabric;
  readonly index: number;
  readonly onRemove: () => void;
}

const WORKED = [
  { value: "flat", label: "flat, in rows" },
  { value: "round", label: "in the round" },
  { value: "turned rounds", label: "in joined turned rounds" },
] as const;

/** One fabric: what it is worked with, its gauge, and how it behaves afterwards. */
export function FabricCard({ fabric, index, onRemove }: FabricCardProps) {
  const { pattern, change } = useEditing("pattern", "change");
  const set = (next: DraftFabric, field: string | null) =>
    change(
      (now) => ({ ...now, fabrics: replaceItem(now.fabrics, index, next) }),
      field && formatPath(["fabrics", index, field]),
    );
  const move = (by: -1 | 1) => change((now) => ({ ...now, fabrics: moveItem(now.fabrics, index, by) }), null);
  const uses = usesOfFabric(pattern, fabric.id);
  return (
    <li>
      <Sheet>
        <FabricBasics fabric={fabric} i={index} onFabric={set}>
          <ItemButtons
            name={fabric.label || `fabric ${index + 1}`}
            onUp={index === 0 ? undefined : () => move(-1)}
            onDown={index === pattern.fabrics.length - 1 ? undefined : () => move(1)}
            onRemove={onRemove}
          />
        </FabricBasics>
        <GaugeFields fabric={fabric} at={index} onFabric={set} />
        <div className="mt-5 grid gap-x-8 gap-y-5 border-t border-line pt-4 md:grid-cols-2">
          <FactorFields fabric={fabric} at={index} factor="settles" onFabric={set} />
          <FactorFields fabric={fabric} at={index} factor="wornStretch" onFabric={set} />
        </div>
        <p className="mt-4 text-sm text-soft">{uses.length === 0 ? "Not used yet." : `Used in ${usesWords(uses)}.`}</p>
      </Sheet>
    </li>
  );
}

interface FabricBasicsProps {
  readonly fabric: DraftFabric;
  readonly i: number;
  readonly onFabric: (next: DraftFabric, field: string | null) => void;
  readonly children: ReactNode;
}

function FabricBasics({ fabric, i, onFabric, children }: FabricBasicsProps) {
  const { pattern } = useEditing("pattern");
  const choose = (value: string) => {
    const { worked: _before, ...rest } = fabric;
    const worked = WORKED.find((choice) => choice.value === value)?.value;
    onFabric(worked === undefined ? rest : { ...rest, worked }, null);
  };
  return (
    <div className="flex flex-wrap items-start gap-x-4 gap-y-3">
      <div className="min-w-48 flex-1">
        <TextField
          at={["fabrics", i, "label"]}
          label="Fabric"
          className="w-full font-semibold"
          value={fabric.label}
          onText={(label) => onFabric({ ...fabric, label }, "label")}
        />
      </div>
      <NumberField
        at={["fabrics", i, "toolMm"]}
        label={pattern.craft === "crochet" ? "Hook" : "Needles"}
        behind="mm"
        className="w-17"
        value={fabric.toolMm}
        onText={(toolMm) => onFabric({ ...fabric, toolMm }, "toolMm")}
      />
      <div className="w-52 max-w-full">
        <ChoiceField
          at={["fabrics", i, "worked"]}
          label="How it is worked"
          nothing="not specified"
          value={fabric.worked ?? ""}
          choices={WORKED}
          onChoice={choose}
        />
      </div>
      <span className="ml-auto self-end">{children}</span>
    </div>
  );
}
