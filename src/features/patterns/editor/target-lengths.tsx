"use client";

import { ownValue } from "@/engine/pattern";
import { useEditing } from "./editing";
import { NumberField } from "./fields";
import { GridArea } from "./grid-area";
import { type LengthTarget, type TargetEdit, withTypedSizes } from "./target-kinds";

/** A length in each size; a row or a column of a spreadsheet can be pasted. */
export function TargetLengths({ target: { cm }, index, measurement, onTarget }: TargetEdit<LengthTarget>) {
  const { pattern, unit } = useEditing("pattern", "unit");
  return (
    <GridArea
      onBlock={(block, row) => onTarget({ cm: withTypedSizes(pattern, cm, { texts: block.flat(), from: row }) }, null)}
    >
      <ol className="flex flex-wrap gap-x-4 gap-y-3">
        {pattern.sizes.map(({ id, label }, row) => (
          <li key={id} data-row={row} data-column={0} className="max-w-44">
            <NumberField
              at={["measurements", index, "target", "cm", id]}
              label={label || id}
              kind="length"
              behind={unit}
              question={`measurements.${measurement}.target.cm.${id}`}
              value={ownValue(cm, id)}
              onText={(text) => onTarget({ cm: { ...cm, [id]: text } }, `cm.${id}`)}
            />
          </li>
        ))}
      </ol>
    </GridArea>
  );
}
