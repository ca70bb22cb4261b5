import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { markTakenDown } from "./photo-actions";
import { withdrawalWords } from "./photo-copy";
import type { Withdrawal } from "./photo-sheet-data";

interface WithdrawalListProps {
  readonly callId: string;
  readonly withdrawals: readonly Withdrawal[];
  readonly mayEdit: boolean;
}

/** What testers no longer allow, until the designer has taken it down. */
export function WithdrawalList({ callId, withdrawals, mayEdit }: WithdrawalListProps) {
  if (withdrawals.length === 0) return null;
  return (
    <Section title="Take down">
      <ul aria-label="Photos to take down" className="grid gap-4">
        {withdrawals.map(({ withdrawalId, ...withdrawn }) => {
          const words = withdrawalWords(withdrawn);
          return (
            <li key={withdrawalId} className="grid gap-2 border-l-4 border-thread pl-4 wrap-anywhere">
              <p>{words}</p>
              {mayEdit ? (
                <OneButtonForm
                  action={markTakenDown}
                  sends={{ callId, withdrawalId }}
                  button="Done"
                  waiting="Saving …"
                  about={words}
                />
              ) : null}
            </li>
          );
        })}
      </ul>
    </Section>
  );
}
