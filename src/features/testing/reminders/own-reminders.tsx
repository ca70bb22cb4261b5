import Link from "next/link";
import { zoneWords } from "@/ui/moment-copy";
import { Section } from "@/ui/section";
import type { LoadedTester } from "../home/loaders";
import { CHOICE_WORDS } from "./reminder-choice-copy";
import type { ReminderChoice } from "./reminder-choice";

interface OwnRemindersProps {
  readonly tester: LoadedTester["tester"];
  readonly choice: ReminderChoice;
}

/** How often a tester is reminded, and where they change it. */
export function OwnReminders({ tester: { testerId, timeZone }, choice }: OwnRemindersProps) {
  return (
    <Section title="Reminders">
      <p>
        {CHOICE_WORDS[choice]} {choice === "none" ? null : `They come at eight in the morning, ${zoneWords(timeZone)}.`}
      </p>
      <Link
        href={`/testing/${testerId}/reminders`}
        prefetch={false}
        className="text-link inline-flex min-h-9 items-center"
      >
        Change reminders
      </Link>
    </Section>
  );
}
