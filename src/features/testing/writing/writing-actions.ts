"use server";

import { callAccess } from "@/features/calls/access";
import { actingViewer } from "@/server/action";
import { consumeAttempt, type Limit } from "@/server/rate-limit";
import { sayAction } from "../questions/say-action";
import { writeToChosen } from "./writing-mutations";
import { writtenSchema } from "./writing-schema";

const MESSAGES_BY_ACCOUNT: Limit = { name: "written-messages", tries: 30, withinSeconds: 60 * 60 };

/** A designer writes to several testers at once; each gets a message of their own. */
export const writeMessage = sayAction(
  { schema: writtenSchema, fields: ["subject", "text"] },
  async ({ callId, ...message }) => {
    const viewer = await actingViewer();
    const access = await callAccess(viewer, callId, "editor");
    await consumeAttempt(MESSAGES_BY_ACCOUNT, viewer.accountId);
    const faults = await writeToChosen(access, message);
    return Object.keys(faults).length === 0 ? undefined : faults;
  },
);
