import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { setCountsEarlier } from "./again-actions";
import type { NotCarried } from "./again-data";

interface CountTogetherProps {
  readonly callId: string;
  /** Of the earlier test. */
  readonly title: string;
  readonly isCounted: boolean;
  readonly notCarried: NotCarried;
  readonly mayEdit: boolean;
}

/** Whether the reports of the earlier test count in this one's results, what of them cannot, and a button to change it. */
export function CountTogether({ callId, title, isCounted, notCarried, mayEdit }: CountTogetherProps) {
  const left = leftOutWords(notCarried);
  return (
    <Section
      title="Reports of the earlier test"
      intro={
        isCounted
          ? `Reports of “${title}” count in these results too, with the stitches and rows that were worked there.`
          : `Reports of “${title}” are not counted here: the results come from this test alone.`
      }
    >
      {left.length === 0 ? null : (
        <ul className="mb-4 max-w-2xl list-disc space-y-1 pl-5">
          {left.map((words) => (
            <li key={words} className="wrap-anywhere">
              {words}
            </li>
          ))}
        </ul>
      )}
      {mayEdit ? (
        <OneButtonForm
          action={setCountsEarlier}
          sends={{ callId, counts: isCounted ? "no" : "yes" }}
          button={isCounted ? "Count this test alone" : "Count both tests together"}
          waiting="One moment …"
        />
      ) : null}
    </Section>
  );
}

function leftOutWords({ sizes, measurements, yarn }: NotCarried): string[] {
  return [
    ...sizes.map((label) => `Reports in size ${label} cannot be counted: the newest revision does not have it.`),
    ...measurements.map(
      (label) => `“${label}” cannot be compared: it is made of something that the earlier garments did not have.`,
    ),
    ...(yarn ? ["Yarn cannot be compared: the pieces are made of other stitches now."] : []),
  ];
}
