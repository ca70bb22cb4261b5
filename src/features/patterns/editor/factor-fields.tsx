"use client";

import type { Typed } from "@/engine/editing";
import { useEditing } from "./editing";
import type { DraftFabric } from "./gauge-fields";
import { NumberField } from "./fields";
import { gaugeNumber } from "@/ui/format-gauge";

type Factor = "settles" | "wornStretch";
type Factors = NonNullable<DraftFabric[Factor]>;

interface FactorFieldsProps {
  readonly fabric: DraftFabric;
  readonly at: number;
  readonly factor: Factor;
  readonly onFabric: (next: DraftFabric, field: string | null) => void;
}

const WORDS = {
  settles: {
    title: "From swatch to garment",
    empty: "Leave both empty if the garment has the same gauge as the swatch.",
    says: (unit: string) => `1 ${unit} of swatch becomes`,
    where: "in the garment.",
  },
  wornStretch: {
    title: "Worn",
    empty: "Leave both empty if the fabric should not stretch on the body.",
    says: (unit: string) => `1 ${unit} of the garment becomes`,
    where: "on the body, where a measurement says “stretched”.",
  },
} as const;

const SIDES = [
  { side: "across", label: "× across" },
  { side: "along", label: "× along" },
] as const;

/** How a fabric's length changes, across and along, as factors and as a sentence. */
export function FactorFields({ fabric, at, factor, onFabric }: FactorFieldsProps) {
  const { unit, readable } = useEditing("unit", "readable");
  const { title, empty, says, where } = WORDS[factor];
  const factors = fabric[factor];
  const read = readable?.fabrics.find(({ id }) => id === fabric.id)?.[factor];
  const set = (side: keyof Factors, text: string) => {
    const { [factor]: _before, ...rest } = fabric;
    const next = withFactor(factors, side, text);
    onFabric(next === undefined ? rest : { ...rest, [factor]: next }, `${factor}.${side}`);
  };
  return (
    <fieldset>
      <legend className="mb-1 font-semibold">{title}</legend>
      <div className="flex flex-wrap gap-x-4 gap-y-3">
        {SIDES.map(({ side, label }) => (
          <NumberField
            key={side}
            at={["fabrics", at, factor, side]}
            label={label}
            placeholder="1"
            value={factors?.[side]}
            onText={(text) => set(side, text)}
          />
        ))}
      </div>
      <p aria-live="polite" className="numbers mt-2 text-sm text-soft">
        {factors === undefined || read === undefined
          ? empty
          : `${says(unit)} ${gaugeNumber(read.across)} ${unit} across and ${gaugeNumber(read.along)} ${unit} along ${where}`}
      </p>
    </fieldset>
  );
}

/** Both are left out where neither has a value. */
function withFactor(factors: Factors | undefined, side: keyof Factors, text: string): Factors | undefined {
  const next = { across: 1, along: 1, ...factors, [side]: text };
  return [next.across, next.along].every(isIdle) ? undefined : next;
}

function isIdle(typed: Typed): boolean {
  return typed === 1 || (typeof typed === "string" && typed.trim() === "");
}
