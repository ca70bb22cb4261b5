"use client";

import { getInputProps, type FieldMetadata } from "@conform-to/react";
import { useState } from "react";
import { compareTool } from "@/engine/trade-tables";
import { gaugeOver, parseLength, parseNumber, type LengthUnit } from "@/engine/units";
import { describedBy, Field, Select, TextInput } from "@/ui/field";
import { Sheet } from "@/ui/sheet";

export interface FabricFields {
  readonly label: string;
  readonly toolMm: string;
  readonly stitches: string;
  readonly rows: string;
  readonly over: string;
  readonly worked: string;
}

interface NewPatternFabricProps {
  readonly craft: string;
  readonly unit: LengthUnit;
  readonly fields: { readonly [Key in keyof FabricFields]: FieldMetadata<FabricFields[Key]> };
}

type NumberField = "stitches" | "rows" | "over" | "toolMm";

/** Name, tool and gauge of a fabric, as typed. */
export function NewPatternFabric({ craft, unit, fields }: NewPatternFabricProps) {
  const start = {
    stitches: fields.stitches.initialValue ?? "",
    rows: fields.rows.initialValue ?? "",
    over: fields.over.initialValue ?? (unit === "in" ? "4 in" : "10 cm"),
    toolMm: fields.toolMm.initialValue ?? "",
  };
  const [typed, setTyped] = useState<Readonly<Record<NumberField, string>>>(start);
  const input = (name: NumberField, label: string, hint?: string) => (
    <Field id={fields[name].id} label={label} hint={hint} errors={fields[name].errors}>
      <TextInput
        {...getInputProps(fields[name], { type: "text" })}
        key={name}
        defaultValue={start[name]}
        inputMode={name === "over" ? undefined : "decimal"}
        autoComplete="off"
        className="numbers"
        aria-describedby={describedBy(fields[name].id)}
        onChange={({ currentTarget }) => setTyped((now) => ({ ...now, [name]: currentTarget.value }))}
      />
    </Field>
  );
  return (
    <Sheet className="pb-1 sm:pb-1">
      <div className="grid gap-x-6 sm:grid-cols-2">
        <Field id={fields.label.id} label="Name of the fabric" errors={fields.label.errors}>
          <TextInput
            {...getInputProps(fields.label, { type: "text" })}
            key="label"
            defaultValue={fields.label.initialValue ?? "Main fabric"}
            autoComplete="off"
            aria-describedby={describedBy(fields.label.id)}
          />
        </Field>
        <Field id={fields.worked.id} label="How it is worked" errors={fields.worked.errors}>
          <Select id={fields.worked.id} name={fields.worked.name} defaultValue={fields.worked.initialValue ?? "flat"}>
            <option value="flat">flat, back and forth</option>
            <option value="round">in the round</option>
            <option value="turned rounds">in joined turned rounds</option>
          </Select>
        </Field>
      </div>
      <div className="grid grid-cols-2 items-start gap-x-4 sm:grid-cols-4 sm:gap-x-6">
        {input("stitches", "Gauge: stitches")}
        {input("rows", "and rows")}
        {input("over", "over")}
        {input("toolMm", craft === "knitting" ? "Needles, in mm" : "Hook, in mm")}
      </div>
      <UsualTool craft={craft} typed={typed} />
    </Sheet>
  );
}

/** The usual tool at the typed gauge, once it can be read. */
function UsualTool({
  craft,
  typed,
}: {
  readonly craft: string;
  readonly typed: Readonly<Record<NumberField, string>>;
}) {
  const [stitches, tool] = [parseNumber(typed.stitches), parseNumber(typed.toolMm.replace(/\s*mm\.?$/i, ""))];
  const over = parseLength(typed.over, "cm");
  if (!stitches.ok || !tool.ok || !over.ok || over.cm <= 0 || stitches.value <= 0) return <UsualWords says={null} />;
  // The table counts over 4 in, which the trade writes as 10 cm.
  const stitchesOver10cm =
    Math.abs(over.cm - 10.16) < 0.01 ? stitches.value : gaugeOver({ count: stitches.value, overCm: over.cm });
  const compared = compareTool({
    craft: craft === "knitting" ? "knitting" : "crochet",
    stitchesOver10cm,
    toolMm: tool.value,
  });
  return <UsualWords says={compared?.message ?? null} />;
}

function UsualWords({ says }: { readonly says: string | null }) {
  return (
    <p aria-live="polite" className="mb-5 max-w-3xl text-sm text-soft empty:mb-0">
      {says}
    </p>
  );
}
