import "server-only";
import { environment } from "@/server/environment";

/** Whether this server sends mail: it has been told a mail server. */
export function isMailOn(): boolean {
  return environment().SMTP_URL !== undefined;
}
