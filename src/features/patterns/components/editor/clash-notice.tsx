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

/** No grading keeps every rule: the rules that clash, and what loosening each of them would take. */
export function ClashNotice({ clash, onDone }: ClashNoticeProps) {
  return (
    <div className="mt-4">
      <Notice tone="problem" title="No numbers keep all of these at once">
        <p>Each of these rules has its part in it; without any one of them the others can be kept.</p>
        <ul className="mt-3 grid gap-3">
          {clash.map((one) => (
            <li key={one.clash.says} className="border-t border-line pt-3">
              <p className="font-semibold wrap-anywhere">{one.clash.says}</p>
              <p className="wrap-anywhere">
                {one.helps ? "Way out: " : ""}
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
          Let this lock go
        </Button>
      </div>
    );
  }
  return (
    <a href="?part=counts" onClick={stayOnPage} className="text-link inline-block min-h-6">
      Change the rule
    </a>
  );
}
