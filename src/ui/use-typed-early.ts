"use client";

import { useEffectEvent, useLayoutEffect, useRef, type RefObject } from "react";

type TextField = HTMLInputElement | HTMLTextAreaElement;

/**
 * Picks up what was typed or pasted into a controlled field before the page's scripts had loaded, which React ignores.
 *
 * @returns a reference for the field.
 */
export function useTypedEarly<Control extends TextField>(
  value: string,
  onText: (text: string) => void,
): RefObject<Control | null> {
  const control = useRef<Control>(null);
  const hear = useEffectEvent(() => {
    const text = control.current?.value ?? value;
    if (text !== value) onText(text);
  });
  useLayoutEffect(() => hear(), []);
  return control;
}
