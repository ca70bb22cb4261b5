import "server-only";
import { cache } from "react";
import { reaches } from "@/features/patterns/access";
import type { Revision } from "@/features/patterns/data";
import { foundOr404 } from "@/server/found-or-404";
import { requireViewer, type Viewer } from "@/server/viewer";
import type { CallAccess } from "./access";
import { viewedCall, type CurrentCall } from "./data";

export interface LoadedCall {
  readonly viewer: Viewer;
  readonly access: CallAccess;
  readonly call: CurrentCall;
  readonly revision: Revision;
  /** They are an editor, and the call is not archived: an archived one is only read. */
  readonly mayEdit: boolean;
  readonly mayRestore: boolean;
}

/** What every page of a call needs. A call that is not the viewer's answers as if it did not exist. */
export const loadCall = cache((callId: string): Promise<LoadedCall> => foundOr404(callOfViewer(callId)));

async function callOfViewer(callId: string): Promise<LoadedCall> {
  const viewer = await requireViewer();
  const { access, call, revision } = await viewedCall(viewer, callId);
  const isEditor = reaches(access.pattern.role, "editor");
  const mayRestore = isEditor && call.isArchived;
  return { viewer, access, call, revision, mayEdit: isEditor && !call.isArchived, mayRestore };
}
