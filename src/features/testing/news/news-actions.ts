"use server";

import { z } from "zod";
import type { Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import type { TesterAccess } from "../home/access";
import { forTester } from "../home/for-tester";
import { moveToRevision } from "./move-mutations";
import { markAnswersRead, markCorrectionRead, markRevisionRead } from "./read-mutations";
import { readMarkSchema, type ReadMark } from "./read-mark-schema";

const readSchema = z.object({ testerId: z.string(), mark: readMarkSchema });

/** A tester has read a correction, answers or about a newer revision. */
export async function markRead(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, mark } = parseForm(readSchema, form);
  return await forTester(testerId, (access) => store(access, mark));
}

async function store(access: TesterAccess, mark: ReadMark): Promise<void> {
  switch (mark.what) {
    case "correction":
      return await markCorrectionRead(access, mark.correctionId);
    case "answers":
      return await markAnswersRead(access, mark.answers);
    case "revision":
      return await markRevisionRead(access, mark.number);
  }
}

const moveSchema = z.object({ testerId: z.string(), from: z.uuid(), to: z.uuid() });

/** A tester works from a newer revision from now on. */
export async function move(_last: Failure | undefined, form: FormData): Promise<Failure | undefined> {
  const { testerId, ...revisions } = parseForm(moveSchema, form);
  return await forTester(testerId, (access) => moveToRevision(access, revisions));
}
