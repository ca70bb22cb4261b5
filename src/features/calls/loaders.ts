import "server-only";
import { notFound } from "next/navigation";
import { cache } from "react";
import { reaches } from "@/features/patterns/access";
import { isInvented, latestRevision, type Revision } from "@/features/patterns/data";
import { AppError } from "@/server/errors";
import { requireViewer, type Viewer } from "@/server/viewer";
import { callAccess, type CallAccess } from "./access";
import { callSummary, type CallSummary } from "./data";

export interface LoadedCall {
  readonly viewer: Viewer;
  readonly access: CallAccess;
  readonly call: CallSummary;
  readonly revision: Revision;
  readonly invented: boolean;
  readonly mayEdit: boolean;
}

/** What every page of a call needs. A call that is none of the viewer's answers as if it did not exist. */
export const loadCall = cache(async (callId: string): Promise<LoadedCall> => {
  const viewer = await requireViewer();
  const access = await provedAccess(viewer, callId);
  const [call, revision, invented] = await Promise.all([
    callSummary(access),
    latestRevision(access.pattern),
    isInvented(access.pattern),
  ]);
  return { viewer, access, call, revision, invented, mayEdit: reaches(access.pattern.role, "editor") };
});

async function provedAccess(viewer: Viewer, callId: string): Promise<CallAccess> {
  try {
    return await callAccess(viewer, callId, "viewer");
  } catch (error) {
    if (error instanceof AppError && error.code === "not-found") notFound();
    throw error;
  }
}
