import type { CallDates } from "@/features/recruiting/listing/data";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { dueWords, startWords, type DueWords } from "../due-copy";

interface DateListProps {
  readonly dates: CallDates<TesterDates>;
  /** The reader's zone. */
  readonly zone: string;
  readonly now: Date;
}

/** The dates of a test in the tester's time zone, and how far away each is. */
export function DateList({ dates, zone, now }: DateListProps) {
  const when = { zone, now };
  return (
    <dl className="rounded-sheet border border-line bg-sheet shadow-sheet">
      <DateRow label="Test starts" at={dates.startOn.at} words={startWords(dates.startOn.at, when)} />
      <DateRow label="Swatch by" at={dates.swatchBy.at} words={dueWords(dates.swatchBy.at, when)} />
      <DateRow label="Report by" at={dates.reportBy.at} words={dueWords(dates.reportBy.at, when)} />
    </dl>
  );
}

function DateRow({ label, at, words }: { readonly label: string; readonly at: Date; readonly words: DueWords }) {
  return (
    <div className="flex flex-wrap items-baseline justify-between gap-x-6 border-b border-line px-4 py-2.5 last:border-b-0">
      <dt className="text-soft">{label}</dt>
      <dd className="numbers">
        <time dateTime={at.toISOString()} className="font-semibold">
          {words.day}
        </time>
        <span className="text-soft">, {words.from}</span>
      </dd>
    </div>
  );
}
