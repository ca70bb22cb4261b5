import { placeApplicants } from "@/engine/places";
import type { ApplicantsDocument } from "@/engine/pattern";

type Answer = ReturnType<typeof placeApplicants>;

const REMEMBERED = 20;

/** What was asked last, the oldest first. */
const answers = new Map<string, Answer>();

/** The engine's answer. A page puts the same question whenever it is looked at, so the last answers are remembered. */
export function placedByEngine(document: ApplicantsDocument): Answer {
  const question = JSON.stringify(document);
  const answer = answers.get(question) ?? placeApplicants(document);
  answers.delete(question);
  answers.set(question, answer);
  const [oldest] = answers.keys();
  if (answers.size > REMEMBERED && oldest !== undefined) answers.delete(oldest);
  return answer;
}
