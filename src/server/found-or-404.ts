import "server-only";
import { notFound } from "next/navigation";
import { AppError } from "./errors";

/** What a page loads; what is absent, another's, or not the viewer's to change becomes the page that says there is nothing here. */
export async function foundOr404<Result>(load: Promise<Result>): Promise<Result> {
  try {
    return await load;
  } catch (error) {
    if (error instanceof AppError && (error.code === "not-found" || error.code === "not-allowed")) notFound();
    throw error;
  }
}
