import { Day } from "@/ui/day";
import { Moment } from "@/ui/moment";
import { zoneWords } from "@/ui/moment-copy";
import type { CallListing } from "../loaders";

const DAYS = [
  { key: "applyUntil", label: "Apply until", edge: "end" },
  { key: "startOn", label: "Start on", edge: "start" },
  { key: "swatchBy", label: "Swatch by", edge: "end" },
  { key: "reportBy", label: "Report by", edge: "end" },
] as const;

/** The dates of a call, in its time zone and in the reader's. */
export function CallDays({
  listing: { dates, document },
}: {
  readonly listing: Pick<CallListing, "dates" | "document">;
}) {
  const { timeZone, releaseOn } = document;
  const given = DAYS.flatMap((day) => {
    const at = dates[day.key]?.at;
    return at === undefined ? [] : [{ ...day, at }];
  });
  if (given.length === 0) return null;
  return (
    <section aria-label="Dates">
      <dl className="grid gap-x-6 gap-y-3 sm:grid-cols-[max-content_1fr]">
        {given.map(({ key, label, edge, at }) => (
          <div key={key} className="sm:col-span-2 sm:grid sm:grid-cols-subgrid">
            <dt className="font-semibold">{label}</dt>
            <dd>
              <Moment at={at} timeZone={timeZone} edge={edge} />
            </dd>
          </div>
        ))}
        {releaseOn === undefined ? null : (
          <div className="sm:col-span-2 sm:grid sm:grid-cols-subgrid">
            <dt className="font-semibold">Pattern released</dt>
            <dd>
              Planned for <Day at={new Date(releaseOn)} />
            </dd>
          </div>
        )}
      </dl>
      <p className="mt-3 text-sm text-soft">
        Time zone: {zoneWords(timeZone)} ({timeZone})
      </p>
    </section>
  );
}
