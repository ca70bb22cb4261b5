/** Who asks for a page; each has a cookie of their own, a visitor none. */
type Asker = "designer" | "tester" | "visitor";

export interface BenchPage {
  readonly asker: Asker;
  /** What the row is called after the asker. */
  readonly label: string;
  readonly path: string;
}

/** Ids of a seeded call that addresses are made of. */
export interface SeededIds {
  readonly callId: string;
  readonly testerId: string;
  readonly applicationId: string;
  /** The applicant's own link. */
  readonly applicationLink: string;
}

const OF_DESIGNER = [
  ...["/", "/set-up", "/applications", "/applications/one", "/sizes", "/progress", "/questions"],
  ...[
    "/differences",
    "/differences?view=table",
    "/changes",
    "/swatches",
    "/habits",
    "/mistakes",
    "/yarn",
    "/fit",
    "/method",
  ],
];
const OF_TESTER = ["/", "/pattern", "/swatch", "/counts", "/measurements?m=bust", "/yarn", "/fit", "/report"];

/** Every page that the bench asks for. A page that moves is changed here alone. */
export function benchPages({ callId, testerId, applicationId, applicationLink }: SeededIds): readonly BenchPage[] {
  const under = (base: string, label: string) =>
    label === "/" ? base : base + label.replace("/one", `/${applicationId}`);
  return [
    ...OF_DESIGNER.map((label) => ({ asker: "designer", label, path: under(`/calls/${callId}`, label) }) as const),
    ...OF_TESTER.map((label) => ({ asker: "tester", label, path: under(`/testing/${testerId}`, label) }) as const),
    { asker: "visitor", label: "the open call", path: `/open-calls/${callId}` },
    { asker: "visitor", label: "to apply", path: `/open-calls/${callId}/apply` },
    { asker: "visitor", label: "their application", path: `/applications/${applicationLink}` },
  ];
}

/** Pages that a hundred people open at the same moment. */
export const RUSHED = ["/sizes", "/progress"] as const;
