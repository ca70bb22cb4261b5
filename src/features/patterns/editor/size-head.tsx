"use client";

import type { DraftPattern } from "@/engine/editing";
import { formatPath } from "@/engine/pattern";
import { useEditing } from "./editing";
import { TextField } from "./fields";
import { moveItem, replaceItem } from "./list-items";

interface SizeHeadProps {
  readonly size: DraftPattern["sizes"][number];
  readonly index: number;
  readonly onRemove: () => void;
}

const SMALL =
  "inline-flex min-h-8 min-w-8 items-center justify-center rounded-md text-soft hover:bg-band hover:text-ink disabled:opacity-35";

/** A size's label over its column, buttons to move it, and whether its body measurement is in order. */
export function SizeHead({ size, index, onRemove }: SizeHeadProps) {
  const { pattern, change, warnings } = useEditing("pattern", "change", "warnings");
  const path = formatPath(["sizes", index]);
  const name = size.label || `size ${index + 1}`;
  const move = (by: -1 | 1) => change((now) => ({ ...now, sizes: moveItem(now.sizes, index, by) }), null);
  return (
    <th scope="col" className="w-26 min-w-26 px-1! font-normal">
      <TextField
        at={["sizes", index, "label"]}
        label={`Label of size ${index + 1}`}
        labelled="aloud"
        className="w-full text-right font-semibold text-ink"
        value={size.label}
        onText={(label) =>
          change((now) => ({ ...now, sizes: replaceItem(now.sizes, index, { ...size, label }) }), `${path}.label`)
        }
      />
      <span className="mt-0.5 flex justify-end">
        <button
          type="button"
          className={SMALL}
          disabled={index === 0}
          onClick={() => move(-1)}
          aria-label={`Move ${name} to the left`}
        >
          ←
        </button>
        <button
          type="button"
          className={SMALL}
          disabled={index === pattern.sizes.length - 1}
          onClick={() => move(1)}
          aria-label={`Move ${name} to the right`}
        >
          →
        </button>
        <button type="button" className={SMALL} onClick={onRemove} aria-label={`Remove ${name}`}>
          ✕
        </button>
      </span>
      <span aria-live="polite">
        {warnings.get(path)?.map((says) => (
          <span key={says} className="mt-1 block font-semibold text-thread">
            ▲ {says}
          </span>
        ))}
      </span>
    </th>
  );
}
