"use client";

import type { Relaxation } from "@/engine/grading";
import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { useEditing } from "./editing";
import { withLock } from "./grading-numbers";
import { stayOnPage } from "./part-links";

interface ClashNoticeProps {
  readonly clash: readonly Relaxation[];
  readonly onDone: () => void;
}

/** No grading meets every rule: the conflicting rules, and how to relax each. */
export function ClashNotice({ clash, onDone }: ClashNoticeProps) {
  return (
    <div className="mt-4">
      <Notice tone="problem" title="These rules contradict each other">
        <p>No numbers meet all of them at once. Relaxing any one of them is enough.</p>
        <ul className="mt-3 grid gap-3">
          {clash.map((one) => (
            <li key={one.clash.says} className="border-t border-line pt-3">
              <p className="font-semibold wrap-anywhere">{one.clash.says}</p>
              <p className="wrap-anywhere">
                {one.helps ? "To fix it: " : ""}
                {one.says}
              </p>
              <WayOut clash={one.clash} onDone={onDone} />
            </li>
          ))}
        </ul>
      </Notice>
    </div>
  );
}

function WayOut({
  clash: { rule, count, size },
  onDone,
}: {
  readonly clash: Relaxation["clash"];
  readonly onDone: () => void;
}) {
  const { change } = useEditing("change");
  if (rule === "locked" && count !== undefined && size !== undefined) {
    const unlock = () => {
      change((pattern) => withLock(pattern, count, size, null), null);
      onDone();
    };
    return (
      <div className="mt-2">
        <Button look="quiet" onClick={unlock}>
          Unlock
        </Button>
      </div>
    );
  }
  return (
    <a href="?part=counts" onClick={stayOnPage} className="text-link inline-block min-h-6">
      Go to the rule
    </a>
  );
}
