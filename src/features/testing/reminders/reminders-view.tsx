import { Page } from "@/ui/page";
import { LinkedRemindersForm, LinkedSummaryForm } from "./choice-forms";
import type { LinkedChoice } from "./choice-loaders";
import { STILL_COMES } from "./reminder-choice-copy";

/** What somebody can choose by the link of a reminder or of a daily summary. */
export function RemindersView({ link, chosen }: { readonly link: string; readonly chosen: LinkedChoice }) {
  if (chosen.of === "summary")
    return (
      <Page
        title="Daily summary"
        intro="What cannot wait, such as a tester who had to stop, still comes at once."
        width="narrow"
      >
        <LinkedSummaryForm link={link} isOn={chosen.isOn} />
      </Page>
    );
  const { choice, hasAccount, title } = chosen;
  return (
    <Page
      title="Reminders"
      intro={
        <>
          {hasAccount ? "Of all tests that you take part in" : <bdi>{title}</bdi>}. {STILL_COMES}
        </>
      }
      width="narrow"
    >
      <LinkedRemindersForm link={link} choice={choice} />
    </Page>
  );
}
