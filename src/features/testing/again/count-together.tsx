import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
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
    <Section title="Reports of the earlier test">
      <Sheet>
        <p role="status" className="mb-4 wrap-anywhere">
          {isCounted
            ? `Reports of “${title}” count here too, each with the stitches and rows worked there.`
            : `Reports of “${title}” do not count here: results come from this test alone.`}
        </p>
        {left.length === 0 ? null : (
          <ul className="mb-4 list-disc space-y-1 pl-5">
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
      </Sheet>
    </Section>
  );
}

function leftOutWords({ sizes, measurements, yarn }: NotCarried): string[] {
  return [
    ...sizes.map((label) => `Reports in size ${label} cannot count: the newest revision does not have this size.`),
    ...measurements.map(
      (label) => `“${label}” cannot be compared: the earlier garments did not have everything that it is made of.`,
    ),
    ...(yarn ? ["Yarn cannot be compared: the pieces now have other stitches or rows."] : []),
  ];
}
