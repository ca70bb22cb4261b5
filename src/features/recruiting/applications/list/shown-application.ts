import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import type { ListedApplication } from "./application-board";
import { SHORT_EXPERIENCE, TERMS_WORDS } from "../apply/apply-copy";
import { bodyWords, fitSentence, wishWords } from "./fit-copy";
import { placeWords } from "./place-copy";
import { sizeLabel } from "../own/stored-list";
import type { ShownApplication } from "./application-item";

export interface ListShown {
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
  /** The viewer may decide, not only read. */
  readonly mayDecide: boolean;
}

/** An application in the words of the list. */
export function shownApplication(application: ListedApplication, href: string, shown: ListShown): ShownApplication {
  const { applicationId, name, decision, withdrawnAt, tester } = application;
  const { pattern } = shown;
  return {
    ...{ applicationId, name, decision, href },
    place: tester === null ? null : `${capital(placeWords(tester.state, sizeLabel(pattern, tester.size)))}.`,
    assigned:
      tester === null && application.size !== null && decision !== "no"
        ? `Assigned size ${sizeLabel(pattern, application.size)}, not invited yet.`
        : null,
    lines: withdrawnAt === null ? linesOf(application, shown) : null,
  };
}

function linesOf(application: ListedApplication, shown: ListShown): ShownApplication["lines"] {
  const { measurements, document } = application;
  const works = [SHORT_EXPERIENCE[document.experience], `${TERMS_WORDS[document.terms]} terms`, document.unit];
  return {
    fit: fitSentence(application),
    body: `${capital(bodyWords(measurements ?? {}, shown))}${document.forAnother ? " (somebody else’s)" : ""}.`,
    wishes: `Would make ${wishWords(application, shown.pattern)}.`,
    work: [capital(works.join(", ")), document.yarn, document.tool].filter(Boolean).join(" · "),
  };
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
