"use client";

import { useEditing } from "./editing";

/** The size whose numbers the calculations show. */
export function MeasurementSizeChoice({ label }: { readonly label: string }) {
  const { pattern, size, chooseSize } = useEditing("pattern", "size", "chooseSize");
  if (pattern.sizes.length < 2) return null;
  return (
    <div role="group" aria-label={label} className="mb-4 flex flex-wrap items-center gap-1.5">
      <span className="mr-1 text-sm text-soft" aria-hidden="true">
        {label}
      </span>
      {pattern.sizes.map(({ id, label: name }) => (
        <button
          key={id}
          type="button"
          aria-pressed={id === size}
          onClick={() => chooseSize(id)}
          className="min-h-9 min-w-9 max-w-40 rounded-full border border-line-strong bg-sheet px-3 text-sm wrap-anywhere hover:border-ink aria-pressed:border-ink aria-pressed:bg-ink aria-pressed:font-semibold aria-pressed:text-sheet"
        >
          {name || id}
        </button>
      ))}
    </div>
  );
}
