import { Day } from "@/ui/day";
import { Fold } from "@/ui/fold";
import { OneButtonForm } from "@/ui/one-button-form";
import { reopen } from "./follow-up-actions";
import type { TickedOffFix } from "./instruction-fix-data";
import { fixWords, type InstructionFixListProps } from "./instruction-fix-list";

interface TickedOffFixesProps extends Omit<InstructionFixListProps, "fixes"> {
  readonly fixes: readonly TickedOffFix[];
}

/** What was ticked off in the written instructions; each can be reopened. */
export function TickedOffFixes({ patternId, pattern, fixes, mayEdit }: TickedOffFixesProps) {
  if (fixes.length === 0) return null;
  return (
    <div className="mb-12">
      <Fold title="Ticked off in the instructions">
        <ul className="grid max-w-3xl">
          {fixes.map((fix) => (
            <li
              key={fix.fixId}
              className="numbers flex flex-wrap items-center justify-between gap-x-5 gap-y-1 border-t border-line py-2 wrap-anywhere first:border-t-0"
            >
              <p>
                {fixWords(fix, pattern)}{" "}
                <span className="block text-sm text-soft">
                  Ticked off{fix.doneBy === null ? null : <> by {fix.doneBy}</>} on <Day at={fix.doneAt} />
                </span>
              </p>
              {mayEdit ? (
                <OneButtonForm
                  action={reopen}
                  sends={{ patternId, fixId: fix.fixId }}
                  button="Reopen"
                  waiting="One moment …"
                  about={fixWords(fix, pattern)}
                />
              ) : null}
            </li>
          ))}
        </ul>
      </Fold>
    </div>
  );
}
