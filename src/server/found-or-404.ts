import "server-only";
import { notFound } from "next/navigation";
import { AppError } from "./errors";

/** Loads data for a page; missing data and data that the viewer may not see or change show the not-found page. */
export async function foundOr404<Result>(load: Promise<Result>): Promise<Result> {
  try {
    return await load;
  } catch (error) {
    if (error instanceof AppError && (error.code === "not-found" || error.code === "not-allowed")) notFound();
    throw error;
  }
}
