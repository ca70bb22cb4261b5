"use client";

import { useSyncExternalStore, type ComponentProps } from "react";
import { TextInput } from "./field";

/** A time zone by its name, with the browser's own names to choose from, which are too many to send. */
export function ZoneInput(props: ComponentProps<typeof TextInput>) {
  const zones = useSyncExternalStore(
    () => () => undefined,
    knownZones,
    () => NONE,
  );
  const list = `${props.id}-zones`;
  return (
    <>
      <TextInput {...props} list={list} autoComplete="off" spellCheck={false} />
      <datalist id={list}>
        {zones.map((zone) => (
          <option key={zone} value={zone} />
        ))}
      </datalist>
    </>
  );
}

const NONE: readonly string[] = [];
let known: readonly string[] | undefined;

function knownZones(): readonly string[] {
  known ??= ["UTC", ...Intl.supportedValuesOf("timeZone").filter((zone) => zone !== "UTC")];
  return known;
}
