import Link from "next/link";
import { stepOf } from "@/engine/reporting";
import { fieldWords } from "../report/field-copy";
import type { LoadedTester } from "../home/loaders";
import { aboutField, fieldHref } from "./about-field";
import type { NumberQuestion } from "./asked-data";

interface AskedNewsProps {
  readonly question: NumberQuestion;
  readonly loaded: LoadedTester;
}

/** On the tester's home page: a question of the designer's about a number, until it is answered. */
export function AskedNews({ question: { field, about, asks }, loaded: { tester, inHand } }: AskedNewsProps) {
  const [step] = stepOf(field, inHand.context.pattern);
  const isChanged = aboutField(field, inHand.typed) !== about;
  return (
    <>
      <p className="text-sm text-soft wrap-anywhere">
        <span className="font-semibold text-ink">The designer asks about a number</span>:{" "}
        {fieldWords(field, inHand.context, inHand.typed)}
        {about === "" ? "" : `, “${about}”`}
      </p>
      <p dir="auto" className="mt-1 whitespace-pre-line text-lg leading-snug wrap-anywhere">
        {asks}
      </p>
      <p className="mt-1">
        {isChanged ? (
          <>
            You changed it.{" "}
            <Link href={`/testing/${tester.testerId}/report`} prefetch={false} className="text-link">
              Send your report again
            </Link>{" "}
            so that the designer sees it.
          </>
        ) : step === undefined ? (
          "Your pattern no longer has this number. Tell the designer in another way."
        ) : (
          <Link
            href={fieldHref(tester.testerId, { field, step })}
            prefetch={false}
            className="text-link inline-flex min-h-9 items-center"
          >
            Look at it and answer
          </Link>
        )}
      </p>
    </>
  );
}
