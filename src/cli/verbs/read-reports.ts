import { answerReports, parseReportsInput } from "@/engine/tables";
import type { Verb } from "../verb";

export const readReportsVerb: Verb = {
  name: "read-reports",
  summary: "takes a pasted table of testers’ reports and a pattern; prints what each column and tester says",
  run: (value) => {
    const parsed = parseReportsInput(value);
    return parsed.ok ? { ok: true, output: answerReports(parsed.document) } : parsed;
  },
};
