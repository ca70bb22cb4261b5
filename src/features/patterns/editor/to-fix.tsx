"use client";

import type { MouseEvent } from "react";
import { describePlace } from "./describe-place";
import { useEditing } from "./editing";
import { EDITOR_PARTS, partOfPath } from "./editor-parts";
import { faultSentence } from "@/engine/editing";
import { stayOnPage } from "./part-links";

/** Everything that is to be fixed, with a link to each field. */
export function ToFix() {
  const { pattern, faults, questions } = useEditing("pattern", "faults", "questions");
  const items = [
    ...[...faults].map(([path, says]) => ({ path, says: says.map(faultSentence).join(" ") })),
    ...[...questions.values()].filter(({ meant }) => !meant).map(({ path, message }) => ({ path, says: message })),
  ];
  return (
    <ul aria-label="To fix" className="mb-3 grid max-h-[40vh] gap-1 overflow-y-auto border-b border-line pb-3 text-sm">
      {items.map(({ path, says }) => (
        <li key={path}>
          <a
            href={`?part=${partOfPath(path)}#field-${path}`}
            onClick={goTo(path)}
            className="text-link inline-block min-h-6"
          >
            {describePlace(pattern, path) || labelOfPart(path)}
          </a>{" "}
          <span className="wrap-anywhere">{says}</span>
        </li>
      ))}
    </ul>
  );
}

function labelOfPart(path: string): string {
  const part = partOfPath(path);
  return EDITOR_PARTS.find(({ key }) => key === part)?.label ?? part;
}

/** Opens the part without loading a page, then goes to the field; one in a closed card is found in its part. */
function goTo(path: string) {
  return (event: MouseEvent<HTMLAnchorElement>) => {
    stayOnPage(event);
    if (event.defaultPrevented) requestAnimationFrame(() => setTimeout(() => focusField(path)));
  };
}

function focusField(path: string): void {
  const field = document.getElementById(`field-${path}`);
  field?.scrollIntoView({ block: "center" });
  field?.focus();
}
