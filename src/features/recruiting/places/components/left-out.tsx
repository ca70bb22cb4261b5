import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import type { LoadedBoard } from "../loaders";
import type { PlacesFrame } from "./places-frame";

/** Who is not considered, and why: no decision yet, a no, a maybe, or a missing measurement. */
export function LeftOut({ loaded, frame }: { readonly loaded: LoadedBoard; readonly frame: PlacesFrame }) {
  const { board, side, people } = loaded;
  const { fitBy, withdrawn } = board;
  const { withoutBody } = side;
  const says = countWords(loaded);
  if (says.length === 0 && withoutBody.many === 0 && withdrawn === 0) return null;
  return (
    <div className="-mt-6 mb-12 text-sm text-soft">
      {says.length > 0 ? (
        <p>
          Not considered: {says.join(", ")}. Decide on{" "}
          <Link href={callPageHref(frame.callId, "applications")} className="text-link">
            Applications
          </Link>
          .
        </p>
      ) : null}
      {withoutBody.first.map(({ application, missing }) => (
        <p key={application} className="wrap-anywhere">
          <bdi className="font-semibold">{people.nameOf(application)}</bdi> can’t get a size without{" "}
          {missing.map((id) => (frame.measurements[fitBy.indexOf(id)] ?? id).toLowerCase()).join(" and ")}.
        </p>
      ))}
      {withoutBody.many > withoutBody.first.length ? (
        <p>{withoutBody.many - withoutBody.first.length} more are missing a measurement.</p>
      ) : null}
      {withdrawn > 0 ? (
        <p>
          {withdrawn} {withdrawn === 1 ? "person has" : "people have"} withdrawn.
        </p>
      ) : null}
    </div>
  );
}

function countWords({ board: { words }, considering }: LoadedBoard): string[] {
  const counts = [
    { many: words.none, of: "to decide" },
    { many: considering === "yes" ? words.maybe : 0, of: "maybe" },
    { many: words.no, of: "rejected" },
  ];
  return counts.filter(({ many }) => many > 0).map(({ many, of }) => `${many} ${of}`);
}
