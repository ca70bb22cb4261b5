"use client";

import { createContext, useContext, useEffect } from "react";
import type { AskedField } from "../save-answer";
import { AskedFields } from "./asked-fields";

/** What a form that saves itself has to ask, and the fields that show it themselves. */
interface AskedInForm {
  readonly asked: readonly AskedField[];
  readonly choose: (field: AskedField, which: "there" | "here") => void;
  /** Tells the form that a field shows its own question. @returns undoes it. */
  readonly place: (field: string) => () => void;
  readonly isPlaced: (asked: AskedField) => boolean;
}

export const AskedContext = createContext<AskedInForm | null>(null);

/** Under a field: the choice between its texts from two devices. */
export function AskedAtField({ field }: { readonly field: string }) {
  const form = useContext(AskedContext);
  const place = form?.place;
  useEffect(() => place?.(field), [place, field]);
  const own = form?.asked.filter((each) => each.field === field) ?? [];
  return form === null || own.length === 0 ? null : <AskedFields asked={own} onChoose={form.choose} />;
}

/** The same for fields that the page has no more, such as those of a removed swatch. */
export function AskedElsewhere() {
  const form = useContext(AskedContext);
  const elsewhere = form?.asked.filter((each) => !form.isPlaced(each)) ?? [];
  return form === null || elsewhere.length === 0 ? null : <AskedFields asked={elsewhere} onChoose={form.choose} />;
}
