import Link from "next/link";
import type { PatternDocument } from "@/engine/pattern";
import { Day } from "@/ui/day";
import { testerPageHref } from "@/features/calls/call-pages";
import { SelectBox } from "@/ui/select-shown";
import { sizeLabel } from "../questions/components/note-author";
import { REWARDED_TESTERS } from "./reward-bar";
import type { ThankedTester } from "./thanks-data";

interface RewardListProps {
  readonly callId: string;
  readonly testers: readonly ThankedTester[];
  readonly pattern: PatternDocument;
  readonly mayEdit: boolean;
}

/** A row a tester: how they would like to be named, and what they got. */
export function RewardList({ callId, testers, pattern, mayEdit }: RewardListProps) {
  return (
    <ul aria-label="Testers who sent a report" className="rounded-sheet border border-line bg-sheet shadow-sheet">
      {testers.map(({ testerId, name, size, creditName, isNameless, patternSentAt, namedAt, payment }) => (
        <li
          key={testerId}
          className="grid gap-x-6 gap-y-1 border-b border-line px-4 py-3 last:border-b-0 md:grid-cols-[minmax(0,4fr)_minmax(0,3fr)_minmax(0,4fr)]"
        >
          <p className={`min-w-0 self-center wrap-anywhere ${mayEdit ? "relative pl-9" : ""}`}>
            {mayEdit ? <SelectBox form={REWARDED_TESTERS} name="testerId" value={testerId} about={name} /> : null}
            <Link href={testerPageHref(callId, testerId)} prefetch={false} className="text-link font-semibold">
              <bdi>{name}</bdi>
            </Link>{" "}
            <span className="text-soft">{sizeLabel(pattern, size)}</span>
          </p>
          <p className="self-center wrap-anywhere">{isNameless ? null : <CreditName creditName={creditName} />}</p>
          <ul className="numbers self-center text-sm text-soft">
            <li>
              {patternSentAt === null ? (
                "Finished pattern not sent yet"
              ) : (
                <>
                  Pattern sent <Day at={patternSentAt} />
                </>
              )}
            </li>
            {creditName === "" || isNameless ? null : (
              <li>
                {namedAt === null ? (
                  "Not named yet"
                ) : (
                  <>
                    Named <Day at={namedAt} />
                  </>
                )}
              </li>
            )}
            {payment === "" ? null : (
              <li className="wrap-anywhere">
                <bdi>{payment}</bdi>
              </li>
            )}
          </ul>
        </li>
      ))}
    </ul>
  );
}

function CreditName({ creditName }: Pick<ThankedTester, "creditName">) {
  if (creditName === null) return <span className="text-soft">has not said yet how to be named</span>;
  if (creditName === "") return <span className="font-semibold">does not want to be named</span>;
  return (
    <>
      <span className="text-soft">Name as </span>
      <bdi>{creditName}</bdi>
    </>
  );
}
