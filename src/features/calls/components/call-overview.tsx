import Link from "next/link";
import type { PatternDocument, Places } from "@/engine/pattern";
import { ownValue } from "@/engine/pattern";
import { dayText } from "@/ui/day";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { CallReport, ReportsBySize } from "../reports-data";

interface CallOverviewProps {
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly places: Places;
  readonly reports: ReportsBySize;
  /** Testers are invited and report by themselves. */
  readonly isRun: boolean;
}

/** More names than this in a size are on the Progress page. */
const MOST_LISTED = 12;

/** Who has reported in which size, and how many testers were wanted. */
export function CallOverview({ callId, pattern, places, reports, isRun }: CallOverviewProps) {
  if (reports.total === 0)
    return (
      <EmptyState title="No reports yet">
        <p>
          {isRun
            ? "Once testers report, you see them here by size."
            : "Import your testers’ reports to see them here by size."}
        </p>
      </EmptyState>
    );
  return (
    <Section title="Reports by size">
      <TableFrame label="Testers by size">
        <table className={TABLE}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">Size</th>
              <th scope="col">Tester spots</th>
              <th scope="col">Reported</th>
            </tr>
          </thead>
          <tbody>
            {pattern.sizes.map(({ id, label }) => (
              <tr key={id} className={`${TABLE_ROW} align-top`}>
                <th scope="row" className="font-serif text-lg wrap-anywhere">
                  {label}
                </th>
                <td className="text-soft">{placesWords(ownValue(places, id))}</td>
                <td>
                  <Testers
                    many={reports.bySize.get(id) ?? 0}
                    reports={reports.listed?.filter(({ size }) => size === id) ?? null}
                    href={`/calls/${callId}/progress?size=${id}`}
                  />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </Section>
  );
}

interface TestersProps {
  readonly many: number;
  /** Null where all of the call are too many to be listed here. */
  readonly reports: readonly CallReport[] | null;
  /** The page that lists the testers of the size. */
  readonly href: string;
}

function Testers({ many, reports, href }: TestersProps) {
  if (many === 0) return <span className="text-soft italic">no report yet</span>;
  if (reports === null || many > MOST_LISTED)
    return (
      <Link href={href} prefetch={false} className="text-link inline-flex min-h-6 items-center">
        {many === 1 ? "1 tester" : `${many} testers`}
      </Link>
    );
  return (
    <ul className="flex flex-wrap gap-x-8 gap-y-1">
      {reports.map(({ code, name, sentAt, revisionNumber }) => (
        <li key={code} className="wrap-anywhere">
          {name ?? code}{" "}
          <span className="text-sm text-soft">
            {dayText(sentAt)}, revision {revisionNumber}
          </span>
        </li>
      ))}
    </ul>
  );
}

function placesWords(places: { readonly least: number; readonly wanted: number } | undefined): string {
  if (places === undefined || places.wanted === 0) return "none";
  return places.least === places.wanted ? `${places.wanted}` : `${places.least} to ${places.wanted}`;
}
