import { OneButtonForm } from "@/ui/one-button-form";
import { askDeletionLink } from "./email-link-actions";

/** Mails a link by which whoever is signed in deletes their account. */
export function AskDeletionButton() {
  return <OneButtonForm action={askDeletionLink} sends={{}} button="Send me a link instead" waiting="Sending …" />;
}
