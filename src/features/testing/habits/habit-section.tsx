import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { saveHabitConsent } from "./habit-actions";

interface HabitSectionProps {
  readonly testerId: string;
  readonly designerName: string;
  readonly hasAccount: boolean;
  readonly isAllowed: boolean;
  /** Later tests that it is used in. */
  readonly usedIn: number;
}

/** What this test may say of how its tester measures, in their next one; nothing before they have said so. */
export function HabitSection({ testerId, designerName, hasAccount, isAllowed, usedIn }: HabitSectionProps) {
  return (
    <Section title="Your next tests">
      <p className="mb-3">
        If you test for <bdi>{designerName}</bdi> again, your numbers can be read more closely: from this test
        Sizewright can see how much your measurements scatter, and whether your garment came out wider or longer than
        your swatch. These few numbers are used in your later tests with this designer and nowhere else. They are stored
        under your code in that test and are in the file that the designer can download of it.
      </p>
      {hasAccount ? (
        <>
          <p className="mb-3 font-semibold" role="status">
            {isAllowed ? `You allow this${usedWords(usedIn)}.` : "You have not allowed this."}
          </p>
          <OneButtonForm
            action={saveHabitConsent}
            sends={{ testerId, allows: isAllowed ? "no" : "yes" }}
            button={isAllowed ? "No longer allow this" : "Allow this"}
            waiting="Saving …"
          />
          <p className="mt-3 text-soft">
            {isAllowed
              ? "If you no longer allow it, the numbers are deleted from your later tests and their results are calculated again without them."
              : "It makes no difference to whether you are chosen, and you can take it back at any time."}
          </p>
        </>
      ) : (
        <p className="text-soft">
          For that you need a password: without one, nobody can tell that two tests are by the same person.
        </p>
      )}
    </Section>
  );
}

function usedWords(tests: number): string {
  if (tests === 0) return "; it is not used anywhere yet";
  return tests === 1 ? "; it is used in one later test" : `; it is used in ${tests} later tests`;
}
