"use client";

import { useSyncExternalStore } from "react";

interface SelectBoxProps {
  /** The form that the box belongs to, which may stand elsewhere. */
  readonly form: string;
  readonly name: string;
  readonly value: string;
  /** Of whom, for screen readers. */
  readonly about: string;
}

/** A box before a row of a list, for what is done with several rows at once. */
export function SelectBox({ form, name, value, about }: SelectBoxProps) {
  return (
    <label className="select-box">
      <input type="checkbox" {...{ form, name, value }} />
      <span className="sr-only">Select {about}</span>
    </label>
  );
}

/** Ticks all boxes of a form, or none. Without scripts it is not there, and each box is ticked by itself. */
export function SelectShown({ form, name }: Pick<SelectBoxProps, "form" | "name">) {
  const hasScripts = useSyncExternalStore(
    () => () => undefined,
    () => true,
    () => false,
  );
  if (!hasScripts) return null;
  return (
    <label className="inline-flex min-h-11 cursor-pointer items-center gap-3">
      <input
        type="checkbox"
        className="size-5 shrink-0 accent-thread"
        onChange={({ currentTarget }) => {
          for (const box of document.querySelectorAll<HTMLInputElement>(`input[form="${form}"][name="${name}"]`))
            box.checked = currentTarget.checked;
        }}
      />
      Select all shown
    </label>
  );
}
