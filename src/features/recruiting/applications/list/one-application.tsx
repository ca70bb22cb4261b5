import { AskedFirst } from "@/ui/asked-first";
import { CopyField } from "@/ui/copy-field";
import { isMailOn } from "@/features/mail/mail-status";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { Day } from "@/ui/day";
import { formatLength } from "@/ui/format-length";
import type { ListedApplication } from "./application-board";
import { EXPERIENCE_WORDS, TERMS_WORDS } from "../apply/apply-copy";
import { bodyLabel } from "../apply/asked-of-applicants";
import { differenceWords, fitSentence, wishWords } from "./fit-copy";
import { placeWords } from "./place-copy";
import { Fact, Facts } from "../fact";
import { sizeLabel } from "../own/stored-list";
import { Decision } from "./decision";
import { sendApplicationLink } from "./decision-actions";
import type { ListShown } from "./shown-application";

interface OneApplicationProps {
  readonly application: ListedApplication;
  readonly shown: ListShown;
  /** The address of the applicant's own page, for those who may send it to them; else null. */
  readonly ownAddress: string | null;
  /** Whether they were sent it by mail, when, or why not; null where it was not to be. */
  readonly mail: string | null;
}

type ShownApplicationProps = Pick<OneApplicationProps, "application" | "shown">;

/** One application in full. */
export function OneApplication({ application, shown, ownAddress, mail }: OneApplicationProps) {
  const { withdrawnAt, tester } = application;
  if (withdrawnAt !== null)
    return (
      <p>
        Withdrawn on <Day at={withdrawnAt} />, so its details are not shown. They can resubmit it while applications are
        open.
      </p>
    );
  return (
    <>
      <div className="mb-8 flex flex-wrap items-center gap-x-6 gap-y-3">
        <Decision given={application} callId={shown.mayDecide ? shown.callId : null} />
        {tester === null ? null : (
          <p className="font-semibold">
            This applicant {placeWords(tester.state, sizeLabel(shown.pattern, tester.size))}.
          </p>
        )}
      </div>
      <Section title="Body and sizes" intro={fitSentence(application)}>
        <BodyTable application={application} shown={shown} />
        <p className="mt-4 mb-6 wrap-anywhere">
          Would make {wishWords(application, shown.pattern)}.
          {application.document.forAnother
            ? " The measurements are somebody else’s: they make the garment for them."
            : null}
          {application.document.wearer === undefined ? null : ` ${WORN_BY[application.document.wearer]}`}
        </p>
        {application.fits.length === 0 ? null : <FitTable application={application} shown={shown} />}
      </Section>
      <Section title="Their answers">
        <div className="max-w-3xl">
          <Answers application={application} />
        </div>
      </Section>
      {ownAddress === null ? null : (
        <AskedFirst question="They lost their link">
          <p>
            This opens their own page, where they can withdraw or delete the application. Send it to{" "}
            <bdi>{application.email}</bdi> and to nobody else.
          </p>
          {mail === null ? null : <p className="text-soft wrap-anywhere">{mail}</p>}
          {isMailOn() ? (
            <OneButtonForm
              action={sendApplicationLink}
              sends={{ callId: shown.callId, applicationId: application.applicationId }}
              button="Send it by e-mail"
              waiting="Sending …"
            />
          ) : null}
          <CopyField id="own-address" label="Address of their application" text={ownAddress} button="Copy address" />
        </AskedFirst>
      )}
    </>
  );
}

const WORN_BY = {
  adult: "It is for an adult, who agrees to that.",
  child:
    "It is for a child, and a parent or guardian agrees. No photo of the child is shown in public unless they agree to that, too.",
};

function BodyTable({ application: { measurements, typed }, shown: { pattern, unit } }: ShownApplicationProps) {
  return (
    <ul className="numbers">
      {Object.entries(measurements ?? {}).map(([id, cm]) => (
        <li key={id} className="wrap-anywhere">
          {bodyLabel(pattern, id)} <span className="font-semibold">{formatLength(cm, unit)}</span>
          {typed[id] ? <span className="text-soft">, typed “{typed[id]}”</span> : null}
        </li>
      ))}
    </ul>
  );
}

function FitTable({ application, shown }: ShownApplicationProps) {
  return (
    <TableFrame label="How the body fits each size">
      <table className={TABLE}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">Size</th>
            <th scope="col">Body compared with the size</th>
            <th scope="col">Fits</th>
            <th scope="col">Would make it</th>
          </tr>
        </thead>
        <tbody>
          {application.fits.map((fit) => (
            <tr key={fit.size} className={TABLE_ROW}>
              <th scope="row" className="font-semibold">
                {fit.label}
              </th>
              <td>{differenceWords(fit, shown)}</td>
              <td className="whitespace-nowrap">{fit.isWithinReach ? "✓ yes" : "no"}</td>
              <td>{fit.isAccepted ? "✓ yes" : "no"}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

function Answers({ application }: Pick<OneApplicationProps, "application">) {
  const { name, email, document, createdAt, agreementVersion } = application;
  return (
    <Facts>
      <Fact label="Name">{name}</Fact>
      <Fact label="E-mail">
        <a href={`mailto:${email}`} className="text-link">
          {email}
        </a>
      </Fact>
      <Fact label="Yarn">{document.yarn}</Fact>
      <Fact label="Needle or hook">{document.tool}</Fact>
      <Fact label="Terms and unit">
        {TERMS_WORDS[document.terms]} terms, {document.unit === "in" ? "inches" : "centimetres"}
      </Fact>
      <Fact label="Testing experience">{EXPERIENCE_WORDS[document.experience]}</Fact>
      <Fact label="Social media">{document.handle}</Fact>
      <Fact label="What they have made">{document.pastWork}</Fact>
      <Fact label="Time zone">{document.timeZone ?? "not given"}</Fact>
      <Fact label="Agreed to">
        The agreement, version {agreementVersion}, on <Day at={createdAt} />
      </Fact>
    </Facts>
  );
}
