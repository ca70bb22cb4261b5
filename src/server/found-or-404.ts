import "server-only";
import { notFound } from "next/navigation";
import { AppError } from "./errors";

/** What a page loads; the absent and the forbidden become the same page, which says that there is nothing here. */
export async function foundOr404<Result>(load: Promise<Result>): Promise<Result> {
  try {
    return await load;
  } catch (error) {
    if (error instanceof AppError && (error.code === "not-found" || error.code === "not-allowed")) notFound();
    throw error;
  }
}
