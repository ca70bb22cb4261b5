import { AskedFirst } from "@/ui/asked-first";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import { Sheet } from "@/ui/sheet";
import { dueWords } from "../home/due-copy";
import { declineTest } from "./invited-actions";
import type { InvitedPage } from "./invited-loaders";
import { DateList } from "../home/components/date-list";
import { AcceptForm } from "./accept-form";

interface OpenInvitedProps {
  readonly link: string;
  readonly page: InvitedPage;
  readonly now: Date;
}

/** Who invites whom to test which pattern in which size, the deadline for the answer, and the two answers. */
export function OpenInvited({ link, page: { invited, viewer }, now }: OpenInvitedProps) {
  const { designerName, sizeLabel, patternName, name, expiresAt, timeZone, dates, accountId } = invited;
  const until = dueWords(expiresAt, { zone: timeZone, now });
  return (
    <>
      <p className="text-lg wrap-anywhere">
        {name === null ? null : (
          <>
            <bdi className="font-semibold">{name}</bdi>,{" "}
          </>
        )}
        <bdi className="font-semibold">{designerName}</bdi> invites you to test{" "}
        <bdi className="font-semibold">{patternName}</bdi> in size <bdi className="font-semibold">{sizeLabel}</bdi>.
      </p>
      <p className="mt-2 mb-6 numbers">
        Please answer by <span className="font-semibold">{until.day}</span>, {until.from}.
      </p>
      {invited.pieces === null ? null : (
        <Notice title={`You would make only: ${invited.pieces}`}>
          <p>You swatch, make and measure nothing else.</p>
        </Notice>
      )}
      {dates === null ? (
        <Notice>The designer has not set any dates yet.</Notice>
      ) : (
        <section aria-labelledby="invited-dates" className="mb-8">
          <h2 id="invited-dates" className="mb-1">
            Dates
          </h2>
          <p className="mb-3 text-soft">Time zone: {timeZone.replaceAll("_", " ")}</p>
          <DateList dates={dates} zone={timeZone} now={now} />
        </section>
      )}
      <Sheet>
        <h2 className="mb-4">Your answer</h2>
        <AcceptForm
          link={link}
          wearer={invited.wearer}
          agreement={invited.agreement}
          craft={invited.craft}
          unit={invited.unit}
          terms={invited.terms}
          timeZone={timeZone}
          hasOwnZone={invited.hasOwnZone}
          zones={Intl.supportedValuesOf("timeZone")}
          viewerName={accountId === null ? (viewer?.name ?? null) : null}
        />
        <div className="mt-6 border-t border-line pt-3">
          <AskedFirst question="Decline">
            <p>Your spot goes to somebody else and this link stops working. You need not give a reason.</p>
            <OneButtonForm action={declineTest} sends={{ link }} button="Decline" waiting="Declining …" />
          </AskedFirst>
        </div>
      </Sheet>
    </>
  );
}
