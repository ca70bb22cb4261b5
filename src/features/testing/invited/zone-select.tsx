"use client";

import { useState, useSyncExternalStore } from "react";
import { Select } from "@/ui/field";

interface ZoneSelectProps {
  readonly id: string;
  readonly name: string;
  readonly zones: readonly string[];
  /** The tester's own choice; otherwise the call's, for browsers that do not say theirs. */
  readonly zone: string;
  /** The tester chose this zone. */
  readonly isOwn: boolean;
  readonly describedBy: string;
}

/** A time zone: the tester's choice, else the browser's, else the call's. */
export function ZoneSelect({ id, name, zones, zone, isOwn, describedBy }: ZoneSelectProps) {
  const [chosen, setChosen] = useState<string | null>(null);
  const ofBrowser = useSyncExternalStore(
    () => () => undefined,
    () => Intl.DateTimeFormat().resolvedOptions().timeZone,
    () => null,
  );
  const value = chosen ?? (isOwn ? zone : (ofBrowser ?? zone));
  const options = zones.includes(value) ? zones : [value, ...zones];
  return (
    <Select
      id={id}
      name={name}
      value={value}
      aria-describedby={describedBy}
      onChange={(event) => setChosen(event.currentTarget.value)}
    >
      {options.map((option) => (
        <option key={option} value={option}>
          {option.replaceAll("_", " ")}
        </option>
      ))}
    </Select>
  );
}
