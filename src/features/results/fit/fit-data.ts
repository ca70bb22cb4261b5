import "server-only";
import { z } from "zod";
import { callScopeSql, type CallAccess } from "@/features/calls/access";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";

/** What one tester says of one area of the body, in their newest report. */
export interface FitAnswer {
  readonly tester: string;
  readonly name: string;
  /** Id of the size. */
  readonly size: string;
  readonly area: string;
  readonly scale: -2 | -1 | 0 | 1 | 2;
  readonly says: string | null;
}

const answerSchema: z.ZodType<FitAnswer> = z.object({
  tester: z.string(),
  name: z.string(),
  size: z.string(),
  area: z.string(),
  scale: z.union([z.literal(-2), z.literal(-1), z.literal(0), z.literal(1), z.literal(2)]),
  says: z.string().nullable(),
});

export interface FitRemarks {
  readonly shown: readonly FitAnswer[];
  readonly areThereMore: boolean;
}

const MAX_REMARKS = 60;

/** What testers write beside their answers; people's words stay in their reports, and are read from there. */
export async function fitRemarks(access: CallAccess): Promise<FitRemarks> {
  const written = await readAnswers(access, { withWordsOnly: true, most: MAX_REMARKS + 1 });
  return { shown: written.slice(0, MAX_REMARKS), areThereMore: written.length > MAX_REMARKS };
}

/** Every answer on the fit, testers in the call's order. */
export async function fitAnswers(access: CallAccess): Promise<FitAnswer[]> {
  return await readAnswers(access, { withWordsOnly: false, most: null });
}

interface WantedAnswers {
  readonly withWordsOnly: boolean;
  /** The first so many; null for all. */
  readonly most: number | null;
}

async function readAnswers(access: CallAccess, { withWordsOnly, most }: WantedAnswers): Promise<FitAnswer[]> {
  const wanted = withWordsOnly ? WITH_WORDS : Prisma.sql`true`;
  const rows = await database().$queryRaw<unknown[]>`
    SELECT tester.code AS tester, coalesce(tester_contact.name, tester.code) AS name,
      newest.document ->> 'size' AS size, answer ->> 'area' AS area,
      (answer ->> 'scale')::int AS scale, answer ->> 'says' AS says
    FROM tester
    JOIN LATERAL (
      SELECT document FROM report WHERE tester_id = tester.id ORDER BY version DESC LIMIT 1
    ) AS newest ON true
    CROSS JOIN LATERAL jsonb_array_elements(coalesce(newest.document -> 'fit', '[]')) AS answer
    LEFT JOIN tester_contact ON tester_contact.tester_id = tester.id
    WHERE tester.call_id = ${access.callId}::uuid AND ${wanted} AND ${callScopeSql(access)}
    ORDER BY tester.position
    LIMIT ${most}`;
  return z.array(answerSchema).parse(rows);
}

/** Reports in which nobody wrote are not opened: an index knows the others. */
const WITH_WORDS = Prisma.sql`
  answer ->> 'says' IS NOT NULL
  AND tester.id IN (SELECT tester_id FROM report WHERE jsonb_path_exists(document, '$.fit[*].says'))`;
