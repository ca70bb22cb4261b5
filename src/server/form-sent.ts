import "server-only";
import { headers } from "next/headers";

/** True where a page is requested by submitting one of its forms without JavaScript. */
export async function isFormSent(): Promise<boolean> {
  return (await headers()).get("content-type")?.startsWith("multipart/form-data") ?? false;
}
